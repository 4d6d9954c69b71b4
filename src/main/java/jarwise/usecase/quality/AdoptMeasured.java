package jarwise.usecase.quality;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.DetectionValue;
import jarwise.stats.estimate.DetectionShare;
import jarwise.usecase.form.Fields;
import jarwise.usecase.settings.AdoptShare;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Puts a share that was measured here to use from a day on, or ends its use; both stay on record.
 *
 * @param quality what was measured
 * @param adopt where values in use are kept
 */
public record AdoptMeasured(ShowQuality quality, AdoptShare adopt) {

    /**
     * Uses a measured share. Its numbers are worked out anew, never taken from the form.
     *
     * @param fields {@code share}, the {@link MeasuredShare#key}, {@code from} and {@code source}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     * @throws Refused if nothing is measured by that name any more
     */
    public void run(String nursery, Fields fields, LocalDate today, Instant now) {
        String key = fields.text("share");
        MeasuredShare share =
                quality.run(nursery, today).shares().stream()
                        .filter(one -> one.key().equals(key))
                        .findFirst()
                        .orElseThrow(() -> new Refused(Message.of("quality.adopt.gone")));
        DetectionShare.Measured numbers = share.estimate().adopted();
        Map<String, String> typed = new TreeMap<>();
        typed.put("kind", Fields.wordOf(share.kind()));
        typed.put("of", share.whose());
        typed.put("subject", share.subject().pest() + "/" + share.subject().stageGroup());
        typed.put("found", String.valueOf(numbers.found()));
        typed.put("known", String.valueOf(numbers.outOf()));
        typed.put("from", fields.text("from"));
        typed.put("source", fields.text("source"));
        adopt.run(nursery, Fields.of(typed), now);
    }

    /**
     * Ends the use of a value: from {@code day} on it no longer corrects.
     *
     * @param fields {@code share}, a {@link MeasuredShare#key}, and {@code since}, its first day
     * @throws Refused if there is none, or it has ended already
     */
    public void end(String nursery, Fields fields, LocalDate day) {
        List<DetectionValue> all = adopt.settings().detection(nursery);
        for (int position = 0; position < all.size(); position++) {
            DetectionValue value = all.get(position);
            if (key(value).equals(fields.text("share"))
                    && value.holdsFrom().toString().equals(fields.text("since"))
                    && value.withdrawnOn().isEmpty()) {
                adopt.withdraw(nursery, position, day);
                return;
            }
        }
        throw new Refused(Message.of("settings.share.gone"));
    }

    /** {@return the name of an adopted value's share, as {@link MeasuredShare#key} has it} */
    public static String key(DetectionValue value) {
        return String.join(
                "/",
                Fields.wordOf(value.kind()),
                value.subject(),
                value.pest(),
                value.stageGroup());
    }
}
