package jarwise.fault;

import static jarwise.fault.FaultyData.NURSERY;
import static jarwise.fault.FaultyData.press;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jarwise.base.Refused;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.tally.Deed;
import jarwise.tally.Events;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that can't grow, that another program holds, and a clock that jumps. */
@Tag("slow")
class StarvedDatabaseTest {

    @TempDir Path folder;
    private Path file;
    private Database database;
    private EventStore events;

    @BeforeEach
    void open() {
        file = folder.resolve("jarwise.db");
        database = Database.open(file.toString());
        events = new EventStore(database);
        FaultyData.prepare(database);
        events.append(NURSERY, List.of(press(1)));
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void aFullDiskIsToldAndLosesNothing() {
        List<SampleEvent> many =
                LongStream.rangeClosed(2, 2_000).mapToObj(FaultyData::press).toList();

        Refused refused =
                catchThrowableOfType(
                        Refused.class,
                        () -> FaultyData.withoutRoom(database, () -> events.append(NURSERY, many)));

        assertThat(FaultyData.told(refused)).contains("disk is full").contains("nothing");
        assertThat(events.count()).as("nothing half written").isEqualTo(1);
        assertThat(events.firstBrokenLink()).isEmpty();
        assertThat(events.staleSamples(NURSERY)).isEmpty();
        assertThat(events.append(NURSERY, many)).as("works after room is made").isEqualTo(1_999);
    }

    @Test
    void aBusyDatabaseIsWaitedForThenTold() throws Exception {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement hold = other.createStatement()) {
            hold.execute("begin immediate");

            long start = System.nanoTime();
            Refused refused =
                    catchThrowableOfType(
                            Refused.class, () -> events.append(NURSERY, List.of(press(2))));
            long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start);

            assertThat(FaultyData.told(refused)).contains("Another program is writing");
            assertThat(seconds).as("seconds it waited").isBetween(4L, 20L);
            assertThat(events.count()).as("readers read on").isEqualTo(1);
            hold.execute("rollback");
        }
        assertThat(events.append(NURSERY, List.of(press(2)))).isEqualTo(1);
        assertThat(events.firstBrokenLink()).isEmpty();
    }

    @Test
    void aClockThatJumpsBackAnHourChangesNoCountAndNoOrder() {
        Instant late = Events.AT;
        Instant early = late.minusSeconds(3_600);
        List<SampleEvent> jumping =
                List.of(at(2, late), at(3, early), at(4, early.plusSeconds(1)), at(5, late));
        List<SampleEvent> steady = List.of(at(2, late), at(3, late), at(4, late), at(5, late));

        events.append(NURSERY, jumping);

        assertThat(events.after(1, 10)).as("in the order they came").isEqualTo(jumping);
        assertThat(events.fold(NURSERY, Events.JAR).orElseThrow().tally())
                .isEqualTo(
                        SampleFold.of(Events.JAR, with(press(1), steady), Events.STAGES).tally());
        assertThat(events.firstBrokenLink()).isEmpty();
    }

    private static List<SampleEvent> with(SampleEvent first, List<SampleEvent> rest) {
        List<SampleEvent> all = new java.util.ArrayList<>(List.of(first));
        all.addAll(rest);
        return all;
    }

    private static SampleEvent at(long sequence, Instant at) {
        return new SampleEvent(
                press(sequence).id(),
                Events.JAR,
                at,
                "SC-1",
                Optional.empty(),
                new Deed.Counted("FRANOC", "adult", sequence, Optional.of("A1")));
    }
}
