package jarwise.web.walk;

import jarwise.Program;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.plan.Spot;
import jarwise.sample.Purpose;
import jarwise.sample.Reader;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ReaderStore;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.rounds.RegisterRound;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** A small nursery with a round of eight jars and a blank wash, and the server that serves it. */
final class WalkSite implements AutoCloseable {

    static final String SLUG = "quillback";
    static final String ROUND = "2026-05-11-a";
    static final Instant NOW = Instant.parse("2026-05-11T06:00:00Z");
    static final List<String> JARS =
            List.of(
                    "M9S-346P",
                    "Q3D-25V7",
                    "T4F-5V3C",
                    "7E3-S3EE",
                    "KB6-CQ6M",
                    "43D-ZVMT",
                    "XXQ-KFBN",
                    "F5K-ZNWC");
    static final String BLANK = "J47-TAN3";

    final Database database;
    final EventStore events;
    private final Program program;
    private final int port;
    private Instant now = NOW;

    WalkSite(Path folder) {
        String address = folder.resolve("data").toString();
        program = Program.open(address, () -> now = now.plusSeconds(1));
        database = Database.open(address);
        events = new EventStore(database);
        SiteStore site = new SiteStore(database);
        site.save(new Nursery(SLUG, "Quillback Lane", ZoneId.of("Europe/Paris"), "en"));
        site.save(SLUG, new House("P1", "Propagation", OptionalDouble.of(400)), 0);
        for (int i = 0; i < 12; i++) {
            String bench = "P1-" + (i < 6 ? "A" : "B") + (i % 6 + 1);
            site.save(SLUG, new Bench(bench, "P1", i < 6 ? "A" : "B", i));
        }
        ReaderStore readers = new ReaderStore(database);
        readers.save(SLUG, new Reader("SC-1", "scout", "en", true));
        readers.save(SLUG, new Reader("SC-2", "scout", "es", true));
        new RegisterRound(database).run(SLUG, round());
        port = program.serve(0);
    }

    private static RoundPlan round() {
        List<PlannedJar> jars = new ArrayList<>();
        for (int i = 0; i < JARS.size(); i++) {
            jars.add(jar(JARS.get(i), i + 1, i < 4 ? "P1-B3" : "P1-B5"));
        }
        jars.add(
                new PlannedJar(
                        new SampleCode(BLANK),
                        9,
                        "",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Purpose.TARGETED,
                        SampleRole.BLANK,
                        Optional.empty(),
                        0));
        return new RoundPlan(
                ROUND,
                LocalDate.of(2026, 5, 11),
                SamplingMethod.WASH,
                RoundQuestion.DETECT,
                7,
                Map.of(),
                jars,
                "SC-1",
                NOW);
    }

    private static PlannedJar jar(String code, int walk, String bench) {
        return new PlannedJar(
                new SampleCode(code),
                walk,
                "P1",
                bench,
                Optional.empty(),
                Optional.of("Rubia Tarn"),
                Purpose.RANDOM,
                SampleRole.CROP,
                Optional.of(new Spot(0.1 * walk, 0.5)),
                10);
    }

    /** Treats a bench an hour ago; nobody may enter for twelve hours. */
    void treat(String bench) {
        ProductUse product =
                new ProductUse(
                        "Trial oil",
                        Optional.empty(),
                        List.of(),
                        OptionalDouble.of(12),
                        OptionalInt.empty(),
                        OptionalInt.empty());
        Instant done = NOW.minusSeconds(3600);
        new TreatmentStore(database)
                .add(
                        SLUG,
                        new Application(
                                "T-1",
                                "P1",
                                Set.of(bench),
                                done,
                                Optional.of(done),
                                List.of(product),
                                "2 l",
                                "AP-1",
                                ""),
                        done);
    }

    int port() {
        return port;
    }

    String address(int through, String page) {
        return "http://127.0.0.1:%d/%s/%s".formatted(through, SLUG, page);
    }

    String page(String page) {
        return address(port, page);
    }

    SampleFold jar(String code) {
        return events.fold(SLUG, new SampleCode(code)).orElseThrow();
    }

    /** What phones recorded: everything but the registration. */
    List<SampleEvent> fromPhones() {
        return events.after(0, 1000).stream()
                .filter(event -> event.id().device().startsWith("phone-"))
                .toList();
    }

    @Override
    public void close() {
        database.close();
        program.close();
    }
}
