package jarwise.usecase.intake;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.ImportBatch;
import jarwise.tally.ImportBatch.TakenBack;
import jarwise.tally.SampleEvent;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Takes an import back whole: its counts and steps are voided, what it had corrected stands again,
 * and samples that only it told of end as discarded. The import stays on record.
 */
public final class TakeBackImport {

    private final Database database;
    private final EventStore events;
    private final ImportStore imports;
    private final InstantSource clock;

    public TakeBackImport(Database database, InstantSource clock) {
        this.database = database;
        this.events = new EventStore(database);
        this.imports = new ImportStore(database);
        this.clock = clock;
    }

    /**
     * Takes an import back.
     *
     * @param person role code of who does it
     * @param reason why
     * @throws Refused if there is no such import, or it was taken back before
     */
    public ImportBatch run(String nursery, String id, String person, String reason) {
        return database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    ImportBatch batch =
                            imports.find(nursery, id)
                                    .orElseThrow(
                                            () -> new Refused(Message.of("import.unknown", id)));
                    if (batch.takenBack().isPresent()) {
                        throw new Refused(Message.of("import.taken-back-before", id));
                    }
                    TakenBack takenBack = new TakenBack(clock.instant(), person, reason);
                    Undoing undoing = new Undoing(nursery, batch, takenBack);
                    events.append(nursery, undoing.events());
                    imports.takeBack(nursery, id, takenBack);
                    return batch;
                });
    }

    /** The events that undo one import. */
    private final class Undoing {

        private final String nursery;
        private final ImportBatch batch;
        private final TakenBack takenBack;
        private final Map<SampleCode, List<SampleEvent>> history;
        private final List<SampleEvent> written;
        private final List<SampleEvent> undoing = new ArrayList<>();
        private int recorded;

        Undoing(String nursery, ImportBatch batch, TakenBack takenBack) {
            this.nursery = nursery;
            this.batch = batch;
            this.takenBack = takenBack;
            this.written = TakeBackImport.this.events.ofBatch(nursery, batch.id());
            this.history =
                    TakeBackImport.this.events.ofSamples(
                            nursery, written.stream().map(SampleEvent::sample).toList());
        }

        List<SampleEvent> events() {
            Map<SampleCode, List<SampleEvent>> bySample = new LinkedHashMap<>();
            written.forEach(
                    event ->
                            bySample.computeIfAbsent(event.sample(), code -> new ArrayList<>())
                                    .add(event));
            bySample.forEach(this::undo);
            return undoing;
        }

        private void undo(SampleCode sample, List<SampleEvent> ofImport) {
            List<SampleEvent> all = Objects.requireNonNull(history.get(sample));
            Set<EventId> slips = slips(all);
            int before = recorded;
            for (SampleEvent event : ofImport) {
                if (event.deed() instanceof Deed.Voided voided) {
                    find(all, voided.slip()).ifPresent(this::again);
                } else if (!slips.contains(event.id())) {
                    undoOne(all, event);
                }
            }
            if (nothingLeft(all, slips, before)) {
                add(
                        sample,
                        Optional.of(batch.id()),
                        new Deed.StepTaken(
                                Step.DISCARDED,
                                Map.of(),
                                Optional.empty(),
                                Optional.of("import taken back: " + takenBack.reason())));
            }
        }

        private void undoOne(List<SampleEvent> all, SampleEvent event) {
            add(
                    event.sample(),
                    event.batch(),
                    new Deed.Voided(event.id(), "import taken back: " + takenBack.reason()));
            if (event.deed() instanceof Deed.StepTaken step && step.replaces().isPresent()) {
                find(all, step.replaces().get()).ifPresent(this::again);
            }
        }

        /** What the import had corrected or voided is recorded again as it was. */
        private void again(SampleEvent before) {
            boolean counts = before.deed() instanceof Deed.Counted;
            boolean steps = before.deed() instanceof Deed.StepTaken;
            boolean ofBatchTakenBack =
                    before.batch()
                            .flatMap(id -> imports.find(nursery, id))
                            .map(earlier -> earlier.takenBack().isPresent())
                            .orElse(false);
            if ((counts || steps) && !ofBatchTakenBack) {
                recorded++;
                add(before.sample(), before.batch(), before.deed());
            }
        }

        private void add(SampleCode sample, Optional<String> ofBatch, Deed deed) {
            EventId id = new EventId("take-back-" + batch.id(), undoing.size() + 1L);
            Instant at = takenBack.at();
            undoing.add(new SampleEvent(id, sample, at, takenBack.person(), ofBatch, deed));
        }

        /** Whether no other record of the sample stands, and none was put back. */
        private boolean nothingLeft(List<SampleEvent> all, Set<EventId> slips, int before) {
            return recorded == before
                    && all.stream()
                            .filter(event -> !event.batch().equals(Optional.of(batch.id())))
                            .filter(event -> !slips.contains(event.id()))
                            .allMatch(event -> event.deed() instanceof Deed.Voided);
        }
    }

    private static Optional<SampleEvent> find(List<SampleEvent> events, EventId id) {
        return events.stream().filter(event -> event.id().equals(id)).findFirst();
    }

    private static Set<EventId> slips(List<SampleEvent> events) {
        Set<EventId> slips = new HashSet<>();
        for (SampleEvent event : events) {
            if (event.deed() instanceof Deed.Voided voided) {
                slips.add(voided.slip());
            } else if (event.deed() instanceof Deed.StepTaken step) {
                step.replaces().ifPresent(slips::add);
            }
        }
        return slips;
    }
}
