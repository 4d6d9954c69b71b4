package jarwise.usecase.paper;

import jarwise.base.Message;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Puts on record what was written on the paper sheet of a round: the same steps that a phone notes,
 * with the times that were written. A row that was left blank says nothing. All rows or none.
 */
public final class TypePaperSheet {

    private final Database database;
    private final EventStore events;
    private final InstantSource clock;

    public TypePaperSheet(Database database, InstantSource clock) {
        this.database = database;
        this.events = new EventStore(database);
        this.clock = clock;
    }

    /** {@return the jars of a round that nothing was noted of yet} */
    public List<PlannedJar> open(String nursery, RoundPlan plan) {
        return plan.jars().stream().filter(jar -> isOpen(nursery, jar.code())).toList();
    }

    private boolean isOpen(String nursery, SampleCode code) {
        return events.fold(nursery, code)
                .map(fold -> fold.sample().state() == SampleState.PLANNED)
                .orElse(false);
    }

    /**
     * Records.
     *
     * @param nursery slug of the site
     * @param zone its clocks
     * @param plan the round
     * @param person role code of who types
     * @param fields {@code day}, and for each jar those of {@link PaperRow} with {@code :CODE}
     * @return how many jars were put on record
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public int run(String nursery, ZoneId zone, RoundPlan plan, String person, Fields fields) {
        Instant now = clock.instant();
        PaperRow.Day day = PaperRow.day(fields, plan, zone, now);
        List<PaperRow> rows = new ArrayList<>();
        plan.jars().forEach(jar -> PaperRow.of(fields, jar, day).ifPresent(rows::add));
        return database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    for (PaperRow row : rows) {
                        if (!isOpen(nursery, row.jar().code())) {
                            fields.fault(
                                    row.field(PaperRow.CUT), Message.of("paper.noted-already"));
                        }
                    }
                    if (rows.isEmpty()) {
                        fields.fault("day", Message.of("paper.nothing"));
                    }
                    fields.refuseIfAny();
                    append(nursery, person, rows, now);
                    return rows.size();
                });
    }

    private void append(String nursery, String person, List<PaperRow> rows, Instant now) {
        String device = "desk-" + nursery;
        long sequence = events.lastSequence(device);
        List<SampleEvent> added = new ArrayList<>();
        for (PaperRow row : rows) {
            for (Deed deed : deeds(row)) {
                EventId id = new EventId(device, ++sequence);
                SampleCode code = row.jar().code();
                added.add(new SampleEvent(id, code, now, person, Optional.empty(), deed));
            }
        }
        events.append(nursery, added);
    }

    private static List<Deed> deeds(PaperRow row) {
        List<Deed> deeds = new ArrayList<>();
        deeds.add(step(Step.CUT, row.cutFacts(), Optional.empty()));
        if (row.isWashed()) {
            deeds.add(step(Step.WASHED, row.washFacts(), row.washedAt()));
        }
        row.frozenAt().ifPresent(at -> deeds.add(step(Step.FREEZER_IN, Map.of(), Optional.of(at))));
        return deeds;
    }

    /** What paper does not say is said to be unknown: the desk's clock is not the jar's. */
    private static Deed step(Step step, Map<String, String> facts, Optional<Instant> at) {
        Map<String, String> noted = new TreeMap<>(facts);
        noted.put(Facts.AT, at.map(Instant::toString).orElse(""));
        return new Deed.StepTaken(step, noted, Optional.empty(), Optional.empty());
    }
}
