package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.store.Database;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The settings that survive a power cut are on, on each connection and not only on the first. */
@Tag("slow")
class DurableConnectionsTest {

    /** As many as the pool holds; were it fewer, the barrier would wait for ever and fail. */
    private static final int CONNECTIONS = 4;

    @TempDir Path folder;

    @Test
    void everyConnectionWritesAheadAndFlushesEachCommit() throws Exception {
        try (Database database = Database.open(folder.toString())) {
            CyclicBarrier allAtOnce = new CyclicBarrier(CONNECTIONS);
            ExecutorService readers = Executors.newFixedThreadPool(CONNECTIONS);
            try {
                List<Future<List<String>>> settings =
                        IntStream.range(0, CONNECTIONS)
                                .mapToObj(i -> readers.submit(() -> settings(database, allAtOnce)))
                                .toList();
                for (Future<List<String>> of : settings) {
                    // synchronous 2 is FULL
                    assertThat(of.get()).containsExactly("wal", "2", "1", "5000");
                }
            } finally {
                readers.shutdownNow();
            }
        }
    }

    private static List<String> settings(Database database, CyclicBarrier allAtOnce) {
        return database.read(
                handle -> {
                    try {
                        allAtOnce.await(20, TimeUnit.SECONDS);
                    } catch (Exception e) {
                        throw new IllegalStateException("Not all connections at once", e);
                    }
                    return List.of(
                            pragma(handle, "journal_mode"),
                            pragma(handle, "synchronous"),
                            pragma(handle, "foreign_keys"),
                            pragma(handle, "busy_timeout"));
                });
    }

    private static String pragma(Handle handle, String name) {
        return handle.createQuery("pragma " + name).mapTo(String.class).one();
    }
}
