package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.MigrateUntilKilled;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A migration that is killed leaves the version that was there before. */
@Tag("slow")
class KilledMigrationTest {

    /** More than SQLite holds back in memory: then a part of the new tables is in the log. */
    private static final long HALF_MADE_BYTES = 8L << 20;

    @TempDir Path folder;

    @Test
    void theOldVersionWorksOnAfterAMigrationWasKilled() throws Exception {
        Path file = folder.resolve("jarwise.db");
        try (Database database = Database.open(file.toString())) {
            FaultyData.prepare(database);
            new EventStore(database).append(FaultyData.NURSERY, List.of(FaultyData.press(1)));
        }
        Process process =
                Child.start(MigrateUntilKilled.class, file.toString(), "classpath:sql-slow");
        try {
            waitForLog(file, process);
        } finally {
            process.destroyForcibly().waitFor();
        }

        try (Database database = Database.open(file.toString())) {
            EventStore events = new EventStore(database);
            assertThat(events.append(FaultyData.NURSERY, List.of(FaultyData.press(2)))).isOne();
            assertThat(events.firstBrokenLink()).isEmpty();
            assertThatThrownBy(
                            () ->
                                    database.read(
                                            handle -> handle.execute("select 1 from half_made")))
                    .hasMessageContaining("half_made");
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void theFirstStartMayBeKilledAtAnyMoment(long seed) throws Exception {
        Path file = folder.resolve("jarwise.db");
        Process process = Child.start(MigrateUntilKilled.class, file.toString());
        try {
            assertThat(process.inputReader().readLine()).isEqualTo("opening");
            TimeUnit.MILLISECONDS.sleep(new Random(seed).nextInt(1_500));
        } finally {
            process.destroyForcibly().waitFor();
        }

        try (Database database = Database.open(file.toString())) {
            FaultyData.prepare(database);
            EventStore events = new EventStore(database);
            assertThat(events.append(FaultyData.NURSERY, List.of(FaultyData.press(1)))).isOne();
        }
    }

    private static void waitForLog(Path file, Process process) throws Exception {
        Path log = file.resolveSibling(file.getFileName() + "-wal");
        long deadline = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        while (bytes(log) < HALF_MADE_BYTES) {
            assertThat(process.isAlive()).as("the migration still runs").isTrue();
            assertThat(System.nanoTime()).as("the migration writes").isLessThan(deadline);
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    private static long bytes(Path log) throws IOException {
        return Files.exists(log) ? Files.size(log) : 0;
    }
}
