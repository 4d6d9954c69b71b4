package jarwise.web.microscope;

import jarwise.Program;
import jarwise.decision.ActionThreshold;
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
import jarwise.store.SettingsStore;
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
import java.util.Set;

/** A small nursery whose filters are in the freezer and may be read, and its server. */
public final class MicroscopeSite implements AutoCloseable {

    static final String SLUG = "quillback";
    static final String PEST = "FRANOC";

    /** Labels of the jars of a round, all of one bench. */
    public static final List<String> JARS =
            List.of("M9S-346P", "Q3D-25V7", "T4F-5V3C", "7E3-S3EE", "KB6-CQ6M", "43D-ZVMT");

    private static final ZoneId ZONE = ZoneId.of("Europe/Paris");

    final Database database;
    final EventStore events;
    private final Program program;
    private final int port;
    private long sequence;

    public MicroscopeSite(Path folder, RoundQuestion question) {
        String address = folder.resolve("data").toString();
        program = Program.open(address, InstantSource.system());
        database = Database.open(address);
        events = new EventStore(database);
        SiteStore site = new SiteStore(database);
        site.save(new Nursery(SLUG, "Quillback Lane", ZONE, "en"));
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
        LocalDate day = cut.atZone(ZONE).toLocalDate();
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
        String day = cut.atZone(ZONE).toLocalDate().toString();
        step(code, Step.CUT, cut, Map.of("collected_on", day, "sampling_units", "10"));
        step(code, Step.WASHED, cut.plusSeconds(600), Map.of("fluid", "soap", "fill", "loose"));
        step(code, Step.FREEZER_IN, cut.plusSeconds(900), Map.of());
    }

    private void step(String code, Step step, Instant at, Map<String, String> facts) {
        append(
                code,
                "SC-1",
                at,
                new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty()));
    }

    private void append(String code, String person, Deed... deeds) {
        for (Deed deed : deeds) {
            append(code, person, Instant.now(), deed);
        }
    }

    private void append(String code, String person, Instant at, Deed deed) {
        EventId id = new EventId("desk-site", ++sequence);
        SampleCode sample = new SampleCode(code);
        events.append(
                SLUG, List.of(new SampleEvent(id, sample, at, person, Optional.empty(), deed)));
    }

    /** Sets a line for a pest and group of stages. */
    MicroscopeSite line(String group, double density) {
        LocalDate day = LocalDate.now(ZONE).minusDays(60);
        new SettingsStore(database)
                .add(
                        SLUG,
                        new ActionThreshold(PEST, group, density, day, "HG-1", "quality", "own"),
                        Instant.now());
        return this;
    }

    /** A filter was read at the desk: so many second larvae, and no other stage of the pest. */
    MicroscopeSite read(String code, long larvae, String reader) {
        Map<String, String> reading = Map.of("reader", reader, "cells_readable", "40");
        append(
                code,
                reader,
                new Deed.Counted(PEST, "larva2", larvae, Optional.empty()),
                new Deed.FilterDone(Set.of(PEST, "other", "unsure")),
                new Deed.StepTaken(Step.READ, reading, Optional.empty(), Optional.empty()));
        return this;
    }

    /** The filter was drawn to be counted again. */
    MicroscopeSite drawn(String code) {
        String day = LocalDate.now(ZONE).toString();
        step(
                code + ".r1",
                Step.REGISTERED,
                Instant.now(),
                Map.of(
                        "method", "wash",
                        "role", "recount",
                        "recount_of", code,
                        "collected_on", day,
                        "bench", "P1-B3",
                        "sampling_units", "10"));
        return this;
    }

    public int port() {
        return port;
    }

    public String address(int through) {
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
