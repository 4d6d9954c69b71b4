package jarwise.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EventStoreTest {

    private static final SampleCode JAR = new SampleCode("JAR-1");

    @TempDir Path folder;
    private Database database;
    private EventStore events;
    private SampleStore samples;

    @BeforeEach
    void open() {
        database = Database.open(folder.toString());
        events = new EventStore(database);
        samples = new SampleStore(database);
        new SiteStore(database).save(new Nursery("lane", "Lane", ZoneOffset.UTC, "en"));
        new PestStore(database)
                .save(
                        new Pest(
                                "FRANOC",
                                Optional.of("FRANOC"),
                                "Frankliniella occidentalis",
                                "western flower thrips",
                                false,
                                List.of(
                                        new LifeStage("larva1", "larva", StageMark.LARVA1, 0),
                                        new LifeStage("larva2", "larva", StageMark.LARVA, 1))));
    }

    @AfterEach
    void close() {
        database.close();
    }

    private static SampleEvent event(long sequence, Deed deed) {
        Instant at = Instant.parse("2026-05-04T12:00:00.123456Z");
        EventId id = new EventId("desk", sequence);
        return new SampleEvent(id, JAR, at, "SC-1", Optional.empty(), deed);
    }

    private static SampleEvent cut() {
        return event(
                1,
                new Deed.StepTaken(
                        Step.CUT,
                        Map.of(
                                Facts.COLLECTED_ON, "2026-05-04",
                                Facts.SAMPLING_UNITS, "10",
                                Facts.BENCH, "P1-B3"),
                        Optional.empty(),
                        Optional.empty()));
    }

    private static SampleEvent counted(long sequence, String stage, long individuals) {
        return event(sequence, new Deed.Counted("FRANOC", stage, individuals, Optional.of("A3")));
    }

    @Test
    void keepsAnEventSentTwiceOnce() {
        assertThat(events.append("lane", List.of(cut(), counted(2, "larva1", 3)))).isEqualTo(2);
        assertThat(events.append("lane", List.of(counted(2, "larva1", 3)))).isZero();

        assertThat(events.ofSample("lane", JAR)).containsExactly(cut(), counted(2, "larva1", 3));
        assertThat(samples.countsOf("lane", JAR))
                .containsExactly(Map.entry(new StageKey("FRANOC", "larva1"), 3L));
    }

    @Test
    void refusesOneIdentityWithTwoContents() {
        events.append("lane", List.of(cut(), counted(2, "larva1", 3)));

        assertThatThrownBy(() -> events.append("lane", List.of(counted(2, "larva1", 4))))
                .isInstanceOf(InvalidInput.class);
        assertThat(events.count()).isEqualTo(2);
    }

    @Test
    void tellsZeroFromNotRead() {
        events.append("lane", List.of(cut(), counted(2, "larva1", 0)));
        assertThat(samples.countsOf("lane", JAR)).hasSize(1);
        assertThat(larvae()).as("larva 2 was not read").isEmpty();

        events.append("lane", List.of(event(3, new Deed.FilterDone(Set.of("FRANOC")))));
        assertThat(larvae()).singleElement().returns(0L, CountedSample::individuals);
        assertThat(samples.find("lane", JAR).orElseThrow().state()).isEqualTo(SampleState.READ);
    }

    private List<CountedSample> larvae() {
        LocalDate day = LocalDate.of(2026, 5, 4);
        return samples.counts(
                CountQuery.random(
                        "lane",
                        SamplingMethod.WASH,
                        List.of(new StageKey("FRANOC", "larva1"), new StageKey("FRANOC", "larva2")),
                        day,
                        day));
    }

    @Test
    void chainsEveryEventAndFindsOneThatWasChanged() {
        events.append("lane", List.of(cut(), counted(2, "larva1", 3), counted(3, "larva2", 1)));
        assertThat(events.firstBrokenLink()).isEmpty();
        assertThat(events.staleSamples("lane")).isEmpty();

        database.jdbi()
                .useHandle(
                        handle ->
                                handle.execute(
                                        "update event set deed = replace(deed, '3', '4')"
                                                + " where position = 2"));

        assertThat(events.firstBrokenLink()).hasValue(2);
        assertThat(events.staleSamples("lane")).containsExactly("JAR-1");
    }
}
