package jarwise.usecase.findings;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.store.TalliedSample;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleMemoryTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    @TempDir Path folder;
    private Database database;
    private EventStore events;
    private SampleStore samples;
    private long sequence;

    @BeforeEach
    void open() {
        database = Database.open(folder.toString());
        events = new EventStore(database);
        samples = new SampleStore(database);
        for (String slug : List.of("lane", "other")) {
            new SiteStore(database).save(new Nursery(slug, slug, ZoneOffset.UTC, "en"));
        }
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void answersWhatIsInTheDataWhateverWasRecordedInBetween(long seed) {
        Random random = new Random(seed);
        SampleMemory memory = new SampleMemory(samples, events);
        for (int turn = 0; turn < 60; turn++) {
            String nursery = random.nextInt(4) == 0 ? "other" : "lane";
            if (random.nextBoolean()) {
                events.append(nursery, recorded(random));
            }
            LocalDate from = DAY.plusDays(random.nextInt(6));
            LocalDate to = from.plusDays(random.nextInt(6) - 1);

            assertThat(remembered(memory, nursery, from, to))
                    .isEqualTo(samples.tallied(nursery, from, to));
        }
    }

    private static List<TalliedSample> remembered(
            SampleMemory memory, String nursery, LocalDate from, LocalDate to) {
        return memory.days(nursery, from, to).values().stream()
                .flatMap(day -> day.samples().stream())
                .toList();
    }

    /** A jar cut, moved to another day, or counted; several jars at once, now and then. */
    private List<SampleEvent> recorded(Random random) {
        List<SampleEvent> recorded = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            String day = DAY.plusDays(random.nextInt(6)).toString();
            Map<String, String> facts = Map.of(Facts.COLLECTED_ON, day, Facts.SAMPLING_UNITS, "10");
            Deed deed =
                    random.nextBoolean()
                            ? new Deed.StepTaken(
                                    Step.CUT, facts, Optional.empty(), Optional.empty())
                            : new Deed.Counted(
                                    "FRANOC", "larva1", random.nextInt(9), Optional.empty());
            recorded.add(
                    new SampleEvent(
                            new EventId("desk", ++sequence),
                            new SampleCode("J-" + random.nextInt(6)),
                            Instant.parse("2026-05-04T12:00:00Z").plusSeconds(sequence),
                            "SC-1",
                            Optional.empty(),
                            deed));
        }
        return recorded;
    }
}
