package jarwise.usecase.intake;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.StageKey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A nursery with one pest, and sheets written and taken in by a test. */
final class Intake implements AutoCloseable {

    static final String NURSERY = "quillback";
    static final Pest THRIPS =
            new Pest(
                    "FRANOC",
                    Optional.of("FRANOC"),
                    "Frankliniella occidentalis",
                    "western flower thrips",
                    false,
                    List.of(
                            new LifeStage("larva1", "larva", StageMark.LARVA1, 0),
                            new LifeStage("larva2", "larva", StageMark.LARVA, 1),
                            new LifeStage("adult", "adult", StageMark.ADULT, 2)));

    final Database database;
    private final Path folder;
    private Instant now = Instant.parse("2026-05-07T07:40:00Z");

    Intake(Path folder) {
        this.folder = folder;
        this.database = Database.open(folder.resolve("data").toString());
        new SiteStore(database).save(new Nursery(NURSERY, "Quillback Lane", ZoneOffset.UTC, "en"));
        new PestStore(database).save(THRIPS);
    }

    /** Each look at the clock is a second later, as between two clicks. */
    InstantSource clock() {
        return () -> now = now.plusSeconds(1);
    }

    SheetFile sheet(String name, String text) {
        Path file = folder.resolve(name);
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return SheetFile.read(file, name, Optional.empty());
    }

    static SheetFile reference(String name) {
        Path file = Path.of("src/test/resources/reference/data", name);
        return SheetFile.read(file, name, Optional.empty());
    }

    ImportChoices usual(SheetFile file) {
        return desk().preview().choicesFor(NURSERY, file);
    }

    ImportSheet.Outcome take(SheetFile file) {
        return desk().importSheet().run(NURSERY, "SC-1", file, usual(file));
    }

    ImportSheet.Outcome take(SheetFile file, ImportChoices choices) {
        return desk().importSheet().run(NURSERY, "SC-1", file, choices);
    }

    ImportPlan preview(SheetFile file) {
        return desk().preview().run(NURSERY, file, usual(file));
    }

    ImportDesk desk() {
        return new ImportDesk(database, clock());
    }

    EventStore events() {
        return new EventStore(database);
    }

    SampleStore samples() {
        return new SampleStore(database);
    }

    Map<StageKey, Long> counts(String sample) {
        return samples().countsOf(NURSERY, new SampleCode(sample));
    }

    /** Counts of every sample by its code. */
    Map<String, Map<StageKey, Long>> allCounts() {
        Map<String, Map<StageKey, Long>> all = new TreeMap<>();
        samples()
                .list(NURSERY, SampleFilter.ALL, 0, 100_000)
                .forEach(sample -> all.put(sample.code().text(), counts(sample.code().text())));
        return all;
    }

    @Override
    public void close() {
        database.close();
    }
}
