package jarwise.fault;

import static jarwise.fault.FaultyData.NURSERY;
import static jarwise.fault.FaultyData.press;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jarwise.base.Refused;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import java.nio.file.Path;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database server ends a connection: the request says so, and the next one works. */
@Tag("slow")
class LostConnectionTest {

    @TempDir Path folder;
    private Database database;
    private Database administrator;
    private EventStore events;

    @BeforeEach
    void open() {
        String address = DatabaseUnderTest.POSTGRESQL.freshAddress(folder);
        database = Database.open(address);
        administrator = Database.open(address);
        events = new EventStore(database);
        FaultyData.prepare(database);
        events.append(NURSERY, List.of(press(1)));
    }

    @AfterEach
    void close() {
        administrator.close();
        database.close();
    }

    @Test
    void aConnectionEndedBeforeTheWriteIsToldAndNothingIsSaved() {
        Refused refused =
                catchThrowableOfType(
                        Refused.class,
                        () ->
                                database.write(
                                        handle -> {
                                            end(backendOf(handle));
                                            return events.append(NURSERY, List.of(press(2)));
                                        }));

        assertThat(FaultyData.told(refused)).contains("server can’t be reached");
        worksOnWithout2();
    }

    @Test
    void aConnectionEndedBeforeTheCommitIsToldAndNothingIsSaved() {
        Refused refused =
                catchThrowableOfType(
                        Refused.class,
                        () ->
                                database.write(
                                        handle -> {
                                            int all = events.append(NURSERY, List.of(press(2)));
                                            end(backendOf(handle));
                                            return all;
                                        }));

        assertThat(FaultyData.told(refused)).contains("server can’t be reached");
        worksOnWithout2();
    }

    @Test
    void aReadThatIsEndedIsToldAndTheNextWorks() {
        Refused refused =
                catchThrowableOfType(
                        Refused.class,
                        () ->
                                database.read(
                                        handle -> {
                                            end(backendOf(handle));
                                            return backendOf(handle);
                                        }));

        assertThat(FaultyData.told(refused)).contains("server can’t be reached");
        worksOnWithout2();
    }

    private void worksOnWithout2() {
        assertThat(events.count()).isEqualTo(1);
        assertThat(events.append(NURSERY, List.of(press(2)))).isEqualTo(1);
        assertThat(events.after(0, 10)).containsExactly(press(1), press(2));
        assertThat(events.firstBrokenLink()).isEmpty();
        assertThat(events.staleSamples(NURSERY)).isEmpty();
    }

    private void end(int backend) {
        boolean ended =
                administrator.read(
                        handle ->
                                handle.createQuery("select pg_terminate_backend(:pid, 5000)")
                                        .bind("pid", backend)
                                        .mapTo(Boolean.class)
                                        .one());
        assertThat(ended).isTrue();
    }

    private static int backendOf(Handle handle) {
        return handle.createQuery("select pg_backend_pid()").mapTo(Integer.class).one();
    }
}
