package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.ImportBatch;
import jarwise.tally.SampleEvent;
import jarwise.usecase.intake.ImportPlan.NamedIn;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/**
 * Takes in a sheet of counts: whole or not at all. What is on record already is not counted twice;
 * what the sheet tells otherwise than before becomes a correction.
 */
public final class ImportSheet {

    private final Database database;
    private final EventStore events;
    private final ImportStore imports;
    private final SiteStore sites;
    private final PestStore pests;
    private final SheetComparer comparer;
    private final InstantSource clock;

    public ImportSheet(Database database, InstantSource clock) {
        this.database = database;
        this.events = new EventStore(database);
        this.imports = new ImportStore(database);
        this.sites = new SiteStore(database);
        this.pests = new PestStore(database);
        this.comparer = new SheetComparer(events, imports, pests, sites);
        this.clock = clock;
    }

    /**
     * What came of it.
     *
     * @param plan what was compared
     * @param batch the import; empty if everything was on record already
     */
    public record Outcome(ImportPlan plan, Optional<ImportBatch> batch) {}

    /**
     * Takes in a sheet.
     *
     * @param person role code of who does it
     * @throws jarwise.wire.table.SheetRefused with every fault; then nothing is changed
     */
    public Outcome run(String nursery, String person, SheetFile file, ImportChoices choices) {
        return database.inOneTransaction(
                () -> {
                    // Two copies sent at once: the second waits here and then finds all the same.
                    events.holdOthersBack();
                    ImportPlan plan = comparer.plan(nursery, file, choices);
                    imports.remember(
                            nursery, plan.header(), ChoicesText.write(choices), clock.instant());
                    if (!plan.changesAnything()) {
                        return new Outcome(plan, Optional.empty());
                    }
                    if (choices.addPlaces()) {
                        addPlaces(nursery, plan.places());
                    }
                    addUnnamedPest(plan);
                    ImportBatch batch = batch(person, file, choices, plan);
                    events.append(nursery, eventsOf(batch, plan));
                    imports.add(nursery, batch, plan.rows());
                    return new Outcome(plan, Optional.of(batch));
                });
    }

    private ImportBatch batch(
            String person, SheetFile file, ImportChoices choices, ImportPlan plan) {
        return new ImportBatch(
                UUID.randomUUID().toString().substring(0, 13),
                clock.instant(),
                person,
                file.name(),
                file.fingerprint(),
                plan.header(),
                ChoicesText.write(choices),
                plan.counted(),
                Optional.empty());
    }

    private void addUnnamedPest(ImportPlan plan) {
        String code = PestWords.UNNAMED.code();
        boolean used = plan.rows().stream().anyMatch(row -> row.stage().pest().equals(code));
        if (used && pests.pests().find(code).isEmpty()) {
            pests.save(PestWords.UNNAMED);
        }
    }

    private void addPlaces(String nursery, ImportPlan.NewPlaces places) {
        int position = sites.houses(nursery).size();
        for (String house : places.houses()) {
            sites.save(nursery, new House(house, "", OptionalDouble.empty()), position++);
        }
        int walk = sites.benches(nursery).size();
        for (NamedIn bench : places.benches()) {
            sites.save(nursery, new Bench(bench.name(), bench.within(), "", walk++));
        }
        for (NamedIn variety : places.varieties()) {
            sites.save(
                    nursery,
                    new CropLot(
                            variety.name(),
                            variety.within(),
                            variety.name(),
                            Optional.empty(),
                            Optional.empty(),
                            false));
        }
    }

    private static List<SampleEvent> eventsOf(ImportBatch batch, ImportPlan plan) {
        EventWriter writer = new EventWriter(batch);
        for (SampleDifference sample : plan.samples()) {
            String reason =
                    "sheet of %s, %s"
                            .formatted(
                                    batch.importedAt().atZone(ZoneOffset.UTC).toLocalDate(),
                                    batch.fileName());
            for (EventId ended : sample.revived()) {
                writer.add(sample.sample(), new Deed.Voided(ended, reason));
            }
            for (SampleDifference.StepDifference step : sample.steps()) {
                writer.add(sample.sample(), step(step, reason));
            }
            for (SampleDifference.CountDifference count : sample.counts()) {
                count.voids()
                        .forEach(
                                slip -> writer.add(sample.sample(), new Deed.Voided(slip, reason)));
                writer.add(
                        sample.sample(),
                        new Deed.Counted(
                                count.key().pest(),
                                count.key().lifeStage(),
                                count.after(),
                                Optional.empty()));
            }
        }
        return writer.events;
    }

    private static Deed step(SampleDifference.StepDifference step, String reason) {
        Step which = step.step();
        return new Deed.StepTaken(
                which, step.facts(), step.replaces(), step.replaces().map(id -> reason));
    }

    /** Numbers the events of one import: it is a device of its own. */
    static final class EventWriter {

        private final List<SampleEvent> events = new ArrayList<>();
        private final String device;
        private final String batch;
        private final String person;
        private final Instant at;

        EventWriter(ImportBatch batch) {
            this.device = "import-" + batch.id();
            this.batch = batch.id();
            this.person = batch.person();
            this.at = batch.importedAt();
        }

        void add(SampleCode sample, Deed deed) {
            EventId id = new EventId(device, events.size() + 1L);
            events.add(new SampleEvent(id, sample, at, person, Optional.of(batch), deed));
        }
    }
}
