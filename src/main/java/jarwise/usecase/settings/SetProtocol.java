package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.sample.ProtocolVersion;
import jarwise.store.SettingsStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * Writes a new version of the protocol, valid from a day on. The ones before are kept.
 *
 * @param settings where choices are kept
 */
public record SetProtocol(SettingsStore settings) {

    /**
     * Writes the version.
     *
     * @param fields {@code from}, {@code freeze_hours}, {@code read_within_hours}, {@code
     *     growing_points}, {@code shake_least}, {@code shake_most}, {@code filter_cells}, {@code
     *     note}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, Fields fields, Instant now) {
        fields.needed("from");
        Optional<LocalDate> from = fields.day("from");
        OptionalDouble freeze = number(fields, "freeze_hours", 1_000);
        OptionalDouble within = number(fields, "read_within_hours", 10_000);
        OptionalLong points = whole(fields, "growing_points", 10_000);
        OptionalLong least = whole(fields, "shake_least", 3_600);
        OptionalLong most = whole(fields, "shake_most", 3_600);
        OptionalLong cells = whole(fields, "filter_cells", 10_000);
        if (freeze.isPresent()
                && within.isPresent()
                && freeze.getAsDouble() >= within.getAsDouble()) {
            fields.fault("read_within_hours", Message.of("settings.protocol.order"));
        }
        if (least.isPresent() && most.isPresent() && least.getAsLong() > most.getAsLong()) {
            fields.fault("shake_most", Message.of("settings.protocol.shake"));
        }
        fields.refuseIfAny();
        settings.add(
                nursery,
                new ProtocolVersion(
                        from.orElseThrow(),
                        freeze.orElseThrow(),
                        within.orElseThrow(),
                        (int) points.orElseThrow(),
                        (int) least.orElseThrow(),
                        (int) most.orElseThrow(),
                        (int) cells.orElseThrow(),
                        fields.text("note")),
                now);
    }

    private static OptionalDouble number(Fields fields, String name, double most) {
        fields.needed(name);
        return fields.number(name, 0, most);
    }

    private static OptionalLong whole(Fields fields, String name, long most) {
        fields.needed(name);
        return fields.whole(name, 1, most);
    }
}
