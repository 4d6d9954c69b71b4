package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Events;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that is no whole data file is refused by name, and left byte for byte as it is. */
@Tag("slow")
class DamagedFileTest {

    private static final int PAGE = 4096;

    @TempDir Path folder;
    private Path file;

    @BeforeEach
    void place() {
        file = folder.resolve("jarwise.db");
    }

    @Test
    void refusesATextAndLeavesItAlone() throws IOException {
        refusedAndUntouched("Counts of week 18, typed up later\n".getBytes(StandardCharsets.UTF_8));
        refusedAndUntouched("x".repeat(100_000).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void refusesTheDatabaseOfAnotherProgramAndLeavesItAlone() throws Exception {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            other.createStatement().execute("create table recipe (name text)");
        }
        refusedAndUntouched(Files.readAllBytes(file));
    }

    @ParameterizedTest(name = "{0} bytes left")
    @ValueSource(ints = {1, 15, 50, 100, PAGE - 1, PAGE, 3 * PAGE, 20 * PAGE + 7})
    void refusesAFileCutOffAndLeavesItAlone(int left) throws IOException {
        byte[] whole = filled();
        assertThat(whole.length).isGreaterThan(left);
        refusedAndUntouched(Arrays.copyOf(whole, left));
    }

    @Test
    void refusesAFileWithoutItsLastByteAndLeavesItAlone() throws IOException {
        byte[] whole = filled();
        refusedAndUntouched(Arrays.copyOf(whole, whole.length - PAGE));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void refusesAFileWhoseFirstPageIsRubbishAndLeavesItAlone(long seed) throws IOException {
        byte[] bytes = filled();
        byte[] rubbish = new byte[PAGE];
        new Random(seed).nextBytes(rubbish);
        System.arraycopy(rubbish, 100, bytes, 100, PAGE - 100);
        refusedAndUntouched(bytes);
    }

    @ParameterizedTest(name = "table {0}")
    @ValueSource(strings = {"schema_history", "nursery", "event", "sample", "sample_count"})
    void refusesAFileInWhichATableIsOverwrittenAndLeavesItAlone(String table) throws Exception {
        byte[] bytes = filled();
        int page = rootPage(table);
        Arrays.fill(bytes, (page - 1) * PAGE, page * PAGE, (byte) 0xA5);
        refusedAndUntouched(bytes);
    }

    @Test
    void opensAnEmptyFileAsNewData() throws IOException {
        Files.createFile(file);
        try (Database database = Database.open(file.toString())) {
            assertThat(new EventStore(database).count()).isZero();
        }
    }

    private void refusedAndUntouched(byte[] bytes) throws IOException {
        Files.write(file, bytes);

        assertThatThrownBy(() -> Database.open(file.toString()))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(Words.of(Language.ENGLISH).say(refused.reason()))
                                        .contains(file.toString())
                                        .contains("restore"));
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }

    private int rootPage(String table) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var rows =
                        connection
                                .createStatement()
                                .executeQuery(
                                        "select rootpage from sqlite_master where type = 'table'"
                                                + " and name = '"
                                                + table
                                                + "'")) {
            return rows.getInt(1);
        }
    }

    /** {@return the bytes of data with some samples, closed in good order} */
    private byte[] filled() throws IOException {
        Files.deleteIfExists(file);
        try (Database database = Database.open(file.toString())) {
            new SiteStore(database).save(new Nursery("lane", "Lane", ZoneOffset.UTC, "en"));
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
            new EventStore(database).append("lane", Events.random(new Random(1)));
        }
        return Files.readAllBytes(file);
    }
}
