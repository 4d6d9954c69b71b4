package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.decision.ActionThreshold;
import jarwise.pest.Pests;
import jarwise.store.PestStore;
import jarwise.store.SettingsStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sets the action threshold for some stages of a pest from a day on: the site's own, with reason
 * and source. The one before is kept.
 *
 * @param settings where choices are kept
 * @param pests what can be counted
 */
public record SetLine(SettingsStore settings, PestStore pests) {

    /** Far above any density at which somebody would still hesitate. */
    private static final double MOST = 100_000;

    /** A pest and stages of it that are added up. */
    record Subject(String pest, String group) {

        /** Reads "FRANOC/larva" and checks that the list of pests has it. */
        static Optional<Subject> read(Fields fields, String name, Pests pests) {
            String[] parts = fields.needed(name).split("/", 2);
            Optional<Subject> found =
                    parts.length < 2
                            ? Optional.empty()
                            : pests.find(parts[0])
                                    .filter(pest -> pest.stageGroups().contains(parts[1]))
                                    .map(pest -> new Subject(pest.code(), parts[1]));
            if (found.isEmpty()) {
                fields.fault(name, Message.of("settings.subject.unknown"));
            }
            return found;
        }
    }

    /**
     * Sets the line.
     *
     * @param fields {@code subject} as PEST/group, {@code density}, {@code from}, {@code reason},
     *     {@code source}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, Fields fields, Instant now) {
        Optional<Subject> subject = Subject.read(fields, "subject", pests.pests());
        fields.needed("density");
        OptionalDouble density = fields.number("density", 0, MOST);
        fields.needed("from");
        Optional<LocalDate> from = fields.day("from");
        String reason = fields.needed("reason");
        String source = fields.needed("source");
        fields.refuseIfAny();
        settings.add(
                nursery,
                new ActionThreshold(
                        subject.orElseThrow().pest(),
                        subject.orElseThrow().group(),
                        density.orElseThrow(),
                        from.orElseThrow(),
                        person,
                        reason,
                        source),
                now);
    }
}
