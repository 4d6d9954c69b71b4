package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.DetectionValue;
import jarwise.sample.Fluid;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SettingsStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * Adopts what a fluid washes off, or what a reader sees, from a day on; or lets it end again. Every
 * density of those days is corrected by it, so it needs a source.
 *
 * @param settings where choices are kept
 * @param pests what can be counted
 * @param readers who reads
 */
public record AdoptShare(SettingsStore settings, PestStore pests, ReaderStore readers) {

    private static final long MOST = 1_000_000;

    /**
     * Adopts a share.
     *
     * @param fields {@code kind}, {@code of} (fluid or reader), {@code subject} as PEST/group,
     *     {@code found} and {@code known}, or {@code share}; {@code from}, {@code source}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, Fields fields, Instant now) {
        fields.needed("kind");
        Optional<DetectionValue.Kind> kind = fields.word("kind", DetectionValue.Kind.class);
        String of = fields.needed("of");
        kind.filter(known -> !isOf(nursery, known, of))
                .ifPresent(known -> fields.fault("of", Message.of("settings.share.of", of)));
        Optional<SetLine.Subject> subject = SetLine.Subject.read(fields, "subject", pests.pests());
        OptionalLong found = fields.whole("found", 0, MOST);
        OptionalLong known = fields.whole("known", 1, MOST);
        OptionalDouble share = fields.number("share", 0, 1);
        check(fields, found, known, share);
        fields.needed("from");
        Optional<LocalDate> from = fields.day("from");
        String source = fields.needed("source");
        fields.refuseIfAny();
        settings.add(
                nursery,
                new DetectionValue(
                        kind.orElseThrow(),
                        of,
                        subject.orElseThrow().pest(),
                        subject.orElseThrow().group(),
                        number(found),
                        number(known),
                        share,
                        from.orElseThrow(),
                        Optional.empty(),
                        source),
                now);
    }

    private boolean isOf(String nursery, DetectionValue.Kind kind, String of) {
        return kind == DetectionValue.Kind.EXTRACTION
                ? List.of(Fluid.values()).stream().anyMatch(f -> Fields.wordOf(f).equals(of))
                : readers.readers(nursery).stream().anyMatch(reader -> reader.code().equals(of));
    }

    private static void check(
            Fields fields, OptionalLong found, OptionalLong known, OptionalDouble share) {
        boolean measured = found.isPresent() && known.isPresent();
        if (measured == share.isPresent() || found.isPresent() != known.isPresent()) {
            fields.fault("share", Message.of("settings.share.either"));
        } else if (measured && found.getAsLong() > known.getAsLong()) {
            fields.fault(
                    "found",
                    Message.of(
                            "settings.share.more",
                            String.valueOf(found.getAsLong()),
                            String.valueOf(known.getAsLong())));
        }
    }

    private static OptionalDouble number(OptionalLong whole) {
        return whole.isPresent()
                ? OptionalDouble.of((double) whole.getAsLong())
                : OptionalDouble.empty();
    }

    /**
     * Lets an adopted share end: from {@code day} on it no longer holds. It stays on record.
     *
     * @param position its place in the list of the settings page
     * @throws Refused if there is none there, or it has ended already
     */
    public void withdraw(String nursery, int position, LocalDate day) {
        List<DetectionValue> all = settings.detection(nursery);
        if (position < 0 || position >= all.size() || all.get(position).withdrawnOn().isPresent()) {
            throw new Refused(Message.of("settings.share.gone"));
        }
        settings.withdraw(nursery, all.get(position), day);
    }
}
