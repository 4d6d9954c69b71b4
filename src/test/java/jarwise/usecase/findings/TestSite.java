package jarwise.usecase.findings;

import jarwise.decision.ActionThreshold;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import jarwise.sample.DetectionValue;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.Questions;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.store.work.TreatmentStore;
import jarwise.tally.SampleEvent;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.ShowToday;
import jarwise.usecase.WriteReport;
import jarwise.usecase.rounds.RoundsToWalk;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** An invented nursery in a real database. */
public final class TestSite implements AutoCloseable {

    public static final String SLUG = "oak-end";
    public static final LocalDate START = LocalDate.of(2026, 3, 2);
    private static final Instant RECORDED = Instant.parse("2026-03-01T12:00:00Z");

    public final Database database;
    public final Nursery nursery = new Nursery(SLUG, "Oak End", ZoneOffset.UTC, "en");
    public final SiteStore site;
    public final SettingsStore settings;
    public final TreatmentStore treatments;
    public final RoundStore rounds;
    public final SampleStore samples;
    public final EventStore events;
    public final SeededFilterStore seeded;
    public final SiteCounts counts;

    /** Opens a fresh site in a folder. */
    public TestSite(Path folder) {
        database = Database.open(folder.toString());
        site = new SiteStore(database);
        settings = new SettingsStore(database);
        treatments = new TreatmentStore(database);
        rounds = new RoundStore(database);
        samples = new SampleStore(database);
        events = new EventStore(database);
        seeded = new SeededFilterStore(database);
        PestStore pests = new PestStore(database);
        counts = new SiteCounts(samples, settings, pests, events);
        site.save(nursery);
        pests.save(
                new Pest(
                        "FRANOC",
                        Optional.of("FRANOC"),
                        "Frankliniella occidentalis",
                        "western flower thrips",
                        false,
                        List.of(
                                new LifeStage("larva1", "larva", StageMark.LARVA1, 0),
                                new LifeStage("larva2", "larva", StageMark.LARVA, 1),
                                new LifeStage("adult", "adult", StageMark.ADULT, 2))));
        pests.save(
                new Pest(
                        "HEMTLA",
                        Optional.of("HEMTLA"),
                        "Polyphagotarsonemus latus",
                        "broad mite",
                        false,
                        List.of(new LifeStage("motile", "motile", StageMark.ADULT, 0))));
    }

    /** Adds jars. */
    public TestSite with(Jar... jars) {
        return with(List.of(jars));
    }

    /** Adds jars. */
    public TestSite with(List<Jar> jars) {
        List<SampleEvent> all = jars.stream().flatMap(jar -> jar.events().stream()).toList();
        events.append(SLUG, all);
        return this;
    }

    /** Sets a line. */
    public TestSite line(String pest, String group, double density) {
        settings.add(
                SLUG,
                new ActionThreshold(
                        pest, group, density, START, "HG-1", "flower quality", "own records"),
                RECORDED);
        return this;
    }

    /** Adopts a share as found of known. */
    public TestSite share(
            DetectionValue.Kind kind, String whose, String group, double found, double known) {
        settings.add(
                SLUG,
                new DetectionValue(
                        kind,
                        whose,
                        "FRANOC",
                        group,
                        OptionalDouble.of(found),
                        OptionalDouble.of(known),
                        OptionalDouble.empty(),
                        START,
                        Optional.empty(),
                        "spiked jars"),
                RECORDED);
        return this;
    }

    /** {@return the use case over this site} */
    public ShowFindings showFindings() {
        return new ShowFindings(counts, site, treatments);
    }

    /** {@return the use case over this site} */
    public ShowToday showToday() {
        return new ShowToday(counts, samples, site, treatments, new RoundsToWalk(database));
    }

    /** {@return the use case over this site} */
    public WriteReport writeReport() {
        return new WriteReport(showFindings(), rounds);
    }

    /** {@return how many statements a piece of work sends to the database} */
    public int questionsAskedBy(Runnable work) {
        return Questions.askedBy(database, work);
    }

    /** {@return a stream of jars with these counts of one stage, one after the other} */
    public static Stream<Jar> jars(
            String prefix, LocalDate day, String stage, List<Integer> individuals) {
        return java.util.stream.IntStream.range(0, individuals.size())
                .mapToObj(
                        i ->
                                Jar.of(prefix + "-" + (i + 1), day)
                                        .counted(stage, individuals.get(i)));
    }

    @Override
    public void close() {
        database.close();
    }
}
