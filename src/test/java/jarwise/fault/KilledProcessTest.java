package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.tally.Events;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The process is killed at a random moment, time after time. A power cut can't be made here; that
 * the settings which survive it are on is held by {@link DurableConnectionsTest}.
 */
@Tag("slow")
class KilledProcessTest {

    private static final int KILLS = 3;

    @TempDir Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void keepsEveryAcknowledgedEventWhenItIsKilled(long seed) throws Exception {
        Path file = folder.resolve("jarwise.db");
        try (Database database = Database.open(file.toString())) {
            FaultyData.prepare(database);
        }
        Random random = new Random(seed);
        long saved = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            long acknowledged = countUntilKilled(file, saved + 1, random);
            assertThat(acknowledged).isGreaterThan(saved);
            saved = whatIsThere(file, acknowledged);
        }
    }

    /** {@return the last press of which the process said that it was saved} */
    private static long countUntilKilled(Path file, long first, Random random) throws Exception {
        Process process =
                Child.start(
                        AppendUntilKilled.class,
                        file.toString(),
                        String.valueOf(first),
                        String.valueOf(random.nextInt()));
        AtomicLong last = new AtomicLong();
        CountDownLatch enough = new CountDownLatch(3 + random.nextInt(60));
        Thread drain = drain(process, last, enough);
        try {
            assertThat(enough.await(60, TimeUnit.SECONDS)).as("it counts").isTrue();
            // Somewhere inside an append, not always just after an acknowledgement.
            TimeUnit.MICROSECONDS.sleep(random.nextInt(5_000));
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.waitFor()).as("killed, not ended by itself").isNotZero();
        drain.join();
        return last.get();
    }

    /** Reads to the end of what was printed, also what came between the kill and the end. */
    private static Thread drain(Process process, AtomicLong last, CountDownLatch enough) {
        BufferedReader lines = process.inputReader(StandardCharsets.US_ASCII);
        Thread thread =
                new Thread(
                        () -> {
                            try {
                                for (String line = lines.readLine();
                                        line != null;
                                        line = lines.readLine()) {
                                    last.set(Long.parseLong(line));
                                    enough.countDown();
                                }
                            } catch (IOException e) {
                                throw new UncheckedIOException(e);
                            }
                        });
        thread.start();
        return thread;
    }

    /** {@return the last press in the log, after a look at all that must hold of it} */
    private static long whatIsThere(Path file, long acknowledged) {
        try (Database database = Database.open(file.toString())) {
            EventStore events = new EventStore(database);
            long last = events.lastSequence("tablet");
            assertThat(last).isGreaterThanOrEqualTo(acknowledged);
            assertThat(events.count()).as("no gap, none twice").isEqualTo(last);
            assertThat(events.firstBrokenLink()).isEmpty();
            assertThat(events.staleSamples(FaultyData.NURSERY)).isEmpty();
            assertThat(new SampleStore(database).countsOf(FaultyData.NURSERY, Events.JAR))
                    .containsValue(last);
            return last;
        }
    }
}
