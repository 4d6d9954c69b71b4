package jarwise.usecase;

import jarwise.base.InvalidInput;
import jarwise.site.Nursery;
import jarwise.site.Setting;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.TemperatureStore;
import jarwise.store.work.TreatmentStore;
import jarwise.tally.SampleEvent;
import jarwise.usecase.demo.DemoChoices;
import jarwise.usecase.demo.DemoFloor;
import jarwise.usecase.demo.DemoLedger;
import jarwise.usecase.demo.DemoPests;
import jarwise.usecase.demo.DemoRounds;
import jarwise.usecase.demo.DemoSite;
import jarwise.usecase.demo.Streams;
import jarwise.usecase.demo.day.DemoEvents;
import jarwise.usecase.rounds.RegisterRound;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;

/**
 * Makes the demo nursery: places, choices, ledger and the events of ten rounds, through the same
 * stores as any day's work. What is there and complete is used again; a demo of another version, or
 * one that was not finished, is made anew. Data of anyone else are never touched.
 */
public final class MakeDemo {

    /** Changes with everything that the demo writes, so that an older demo is made anew. */
    static final String VERSION = "3";

    private static final String MARKER = "demo-generator";
    private static final String FILE = "jarwise.db";
    private static final String BEING_MADE = "demo-being-made.db";
    private static final Instant SET_UP = Instant.parse("2026-03-02T11:00:00Z");

    private final Database database;
    private final Consumer<String> progress;
    private final String nursery = DemoSite.NURSERY.slug();

    private MakeDemo(Database database, Consumer<String> progress) {
        this.database = database;
        this.progress = progress;
    }

    /**
     * Makes sure that a folder holds the demo of this version.
     *
     * @param folder the demo's own data folder
     * @param progress told what is being done, in a few words, now and then
     * @return whether it was made now; false when it was there already
     * @throws InvalidInput if the folder holds data of another nursery
     */
    public static boolean inFolder(Path folder, Consumer<String> progress) {
        Path file = folder.resolve(FILE);
        if (Files.exists(file) && isCompleteIn(file.toString())) {
            return false;
        }
        Path unfinished = folder.resolve(BEING_MADE);
        try {
            removeDatabase(unfinished);
            makeIn(unfinished.toString(), progress);
            removeDatabase(file);
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Makes sure that a database holds the demo of this version, all or nothing.
     *
     * @param address of a database server, or a file
     * @param progress told what is being done
     * @return whether it was made now; false when it was there already
     * @throws InvalidInput if the database holds anything else
     */
    public static boolean inDatabase(String address, Consumer<String> progress) {
        if (isCompleteIn(address)) {
            return false;
        }
        makeIn(address, progress);
        return true;
    }

    private static void makeIn(String address, Consumer<String> progress) {
        try (Database database = Database.open(address)) {
            List<Nursery> there = new SiteStore(database).nurseries();
            if (!there.isEmpty()) {
                throw new InvalidInput(
                        ("The database already holds %s; the demo needs an empty one."
                                        + " Maybe it is a demo of another version: then empty it.")
                                .formatted(there.get(0).name()));
            }
            new MakeDemo(database, progress).make();
        }
    }

    private static boolean isCompleteIn(String address) {
        try (Database database = Database.open(address)) {
            for (Nursery known : new SiteStore(database).nurseries()) {
                if (!known.equals(DemoSite.NURSERY) && !known.equals(DemoSite.EMPTY)) {
                    throw new InvalidInput(
                            ("These data hold the nursery %s, which is not of the demo; nothing was"
                                            + " changed. Maybe another folder was meant.")
                                    .formatted(known.name()));
                }
            }
            return new SettingsStore(database)
                    .settings(DemoSite.NURSERY.slug()).stream()
                            .filter(setting -> setting.name().equals(MARKER))
                            .anyMatch(setting -> setting.value().equals(VERSION));
        }
    }

    private static void removeDatabase(Path file) throws IOException {
        for (String part : List.of("", "-wal", "-shm")) {
            Files.deleteIfExists(file.resolveSibling(file.getFileName() + part));
        }
    }

    /** All or nothing: a demo without its marker never comes to be. */
    private void make() {
        database.inOneTransaction(
                () -> {
                    progress.accept("Houses, benches and crops");
                    writeSite();
                    writeChoices();
                    progress.accept("Treatments, releases and temperatures");
                    writeLedger();
                    writeEvents();
                    new RegisterRound(database).run(nursery, DemoRounds.eleventh());
                    LocalDate day = LocalDate.ofInstant(SET_UP, DemoSite.NURSERY.zone());
                    Setting marker = new Setting(MARKER, VERSION, day, "demo", "Made by the demo");
                    new SettingsStore(database).add(nursery, marker, SET_UP);
                    return nursery;
                });
    }

    private void writeSite() {
        SiteStore site = new SiteStore(database);
        site.save(DemoSite.NURSERY);
        site.save(DemoSite.EMPTY);
        for (int i = 0; i < DemoSite.houses().size(); i++) {
            site.save(nursery, DemoSite.houses().get(i), i);
        }
        DemoSite.benches().forEach(bench -> site.save(nursery, bench));
        DemoSite.cropLots().forEach(lot -> site.save(nursery, lot));
        DemoSite.occupancies().forEach(occupancy -> site.save(nursery, occupancy));
        FloorStore floors = new FloorStore(database);
        DemoFloor.houses().forEach((house, place) -> floors.putHouse(nursery, house, place));
        DemoFloor.benches().forEach((bench, place) -> floors.putBench(nursery, bench, place));
        DemoFloor.hotSpots().forEach(spot -> floors.put(nursery, spot));
        RoundStore rounds = new RoundStore(database);
        DemoSite.moves().forEach(move -> rounds.add(nursery, move));
        DemoSite.rounds().forEach(round -> rounds.put(nursery, round));
    }

    private void writeChoices() {
        PestStore pests = new PestStore(database);
        if (pests.pests().all().isEmpty()) {
            ShippedPests.read().forEach(pests::save);
        }
        pests.save(DemoPests.mummies());
        ReaderStore readers = new ReaderStore(database);
        DemoChoices.people().forEach(reader -> readers.save(nursery, reader));
        SettingsStore settings = new SettingsStore(database);
        DemoChoices.thresholds().forEach(line -> settings.add(nursery, line, SET_UP));
        DemoChoices.settings().forEach(setting -> settings.add(nursery, setting, SET_UP));
        DemoChoices.detection().forEach(share -> settings.add(nursery, share, SET_UP));
        settings.add(nursery, DemoChoices.protocol(), SET_UP);
    }

    private void writeLedger() {
        TreatmentStore ledger = new TreatmentStore(database);
        DemoLedger.applications()
                .forEach(
                        spray -> {
                            Instant ended = spray.ended().orElseThrow();
                            ledger.add(nursery, spray, ended.plusSeconds(900));
                        });
        DemoLedger.releases().forEach(release -> ledger.add(nursery, release));
        new TemperatureStore(database).add(nursery, DemoLedger.temperatures());
    }

    private void writeEvents() {
        EventStore store = new EventStore(database);
        List<List<SampleEvent>> batches = DemoEvents.of(Streams.SEED);
        for (int i = 0; i < batches.size(); i++) {
            if (i % 9 == 0) {
                progress.accept("Jars, taps and cards: %d %%".formatted(100 * i / batches.size()));
            }
            store.append(nursery, batches.get(i));
        }
    }
}
