package jarwise.web.microscope;

import jarwise.Program;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.sample.Purpose;
import jarwise.sample.Reader;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ReaderStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.rounds.RegisterRound;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small nursery whose filters are in the freezer and may be read, and its server. */
final class MicroscopeSite implements AutoCloseable {

    static final String SLUG = "quillback";
    static final String PEST = "FRANOC";

    /** Labels of the jars of a round, all of one bench. */
    static final List<String> JARS =
            List.of("M9S-346P", "Q3D-25V7", "T4F-5V3C", "7E3-S3EE", "KB6-CQ6M", "43D-ZVMT");

    final Database database;
    final EventStore events;
    private final Program program;
    private final int port;
    private long sequence;

    MicroscopeSite(Path folder, RoundQuestion question) {
        String address = folder.resolve("data").toString();
        program = Program.open(address, InstantSource.system());
        database = Database.open(address);
        events = new EventStore(database);
        SiteStore site = new SiteStore(database);
        site.save(new Nursery(SLUG, "Quillback Lane", ZoneId.of("Europe/Paris"), "en"));
        site.save(SLUG, new House("P1", "Propagation", OptionalDouble.of(400)), 0);
        site.save(SLUG, new Bench("P1-B3", "P1", "B", 0));
        ReaderStore readers = new ReaderStore(database);
        readers.save(SLUG, new Reader("SC-1", "scout", "en", true));
        readers.save(SLUG, new Reader("SC-2", "scout", "es", true));
        Instant cut = Instant.now().minus(26, ChronoUnit.HOURS);
        new RegisterRound(database).run(SLUG, round(question, cut));
        JARS.forEach(code -> freeze(code, cut));
        port = program.serve(0);
    }

    private static RoundPlan round(RoundQuestion question, Instant cut) {
        LocalDate day = cut.atZone(ZoneId.of("Europe/Paris")).toLocalDate();
        List<PlannedJar> jars = new ArrayList<>();
        for (int i = 0; i < JARS.size(); i++) {
            jars.add(
                    new PlannedJar(
                            new SampleCode(JARS.get(i)),
                            i + 1,
                            "P1",
                            "P1-B3",
                            Optional.empty(),
                            Optional.of("Rubia Tarn"),
                            Purpose.RANDOM,
                            SampleRole.CROP,
                            Optional.empty(),
                            10));
        }
        return new RoundPlan(
                day + "-a", day, SamplingMethod.WASH, question, 7, Map.of(), jars, "SC-1", cut);
    }

    private void freeze(String code, Instant cut) {
        String day = cut.atZone(ZoneId.of("Europe/Paris")).toLocalDate().toString();
        step(code, Step.CUT, cut, Map.of("collected_on", day, "sampling_units", "10"));
        step(code, Step.WASHED, cut.plusSeconds(600), Map.of("fluid", "soap", "fill", "loose"));
        step(code, Step.FREEZER_IN, cut.plusSeconds(900), Map.of());
    }

    private void step(String code, Step step, Instant at, Map<String, String> facts) {
        Deed deed = new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty());
        EventId id = new EventId("desk-site", ++sequence);
        events.append(
                SLUG,
                List.of(
                        new SampleEvent(
                                id, new SampleCode(code), at, "SC-1", Optional.empty(), deed)));
    }

    int port() {
        return port;
    }

    String address(int through) {
        return "http://127.0.0.1:%d/%s/microscope".formatted(through, SLUG);
    }

    SampleFold filter(String code) {
        return events.fold(SLUG, new SampleCode(code)).orElseThrow();
    }

    /** {@return what the server has counted of a stage; −1 where it was not read} */
    long counted(String code, String stage) {
        return new SampleStore(database)
                .countsOf(SLUG, new SampleCode(code))
                .getOrDefault(new StageKey(PEST, stage), -1L);
    }

    /** {@return events that came from the page, of one filter} */
    List<SampleEvent> pressed(String code) {
        return filter(code).history().stream()
                .filter(event -> event.id().device().startsWith("phone-"))
                .toList();
    }

    @Override
    public void close() {
        database.close();
        program.close();
    }
}
