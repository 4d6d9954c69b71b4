package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.tally.Deed;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Puts another number in the place of a count, with a reason. The old one stays in the history.
 *
 * @param log where events go
 */
public record CorrectCount(SampleLog log) {

    private static final long MOST = 1_000_000_000L;

    /**
     * Corrects.
     *
     * @param fields {@code individuals}, {@code reason}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, StageKey key, Fields fields) {
        if (fields.needed("individuals").isEmpty()) {
            fields.fault("individuals", Message.of("sample.count.blank"));
        }
        OptionalLong number = fields.whole("individuals", 0, MOST);
        String reason = fields.needed("reason");
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    OptionalLong before = fold.tally().of(key);
                    if (before.isEmpty()) {
                        fields.fault("individuals", Message.of("sample.count.gone"));
                    } else if (before.equals(number)) {
                        fields.fault("individuals", Message.of("sample.count.same"));
                    }
                    fields.refuseIfAny();
                    List<Deed> deeds = new ArrayList<>(CountDeeds.voided(fold, key, reason));
                    deeds.add(CountDeeds.counted(key, number.orElseThrow()));
                    log.append(nursery, person, code, deeds);
                    return code;
                });
    }
}
