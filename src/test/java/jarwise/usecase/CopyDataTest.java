package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.guard.ServerLock;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Copies from and into either database, and what a check finds. */
class CopyDataTest {

    private static final InstantSource CLOCK =
            InstantSource.fixed(Instant.parse("2026-05-07T05:40:00Z"));

    @Nested
    class FromSqlite extends Contract {
        FromSqlite() {
            super(DatabaseUnderTest.SQLITE, DatabaseUnderTest.SQLITE);
        }
    }

    @Nested
    @Tag("slow")
    class FromPostgresql extends Contract {
        FromPostgresql() {
            super(DatabaseUnderTest.POSTGRESQL, DatabaseUnderTest.POSTGRESQL);
        }
    }

    @Nested
    @Tag("slow")
    class FromSqliteIntoPostgresql extends Contract {
        FromSqliteIntoPostgresql() {
            super(DatabaseUnderTest.SQLITE, DatabaseUnderTest.POSTGRESQL);
        }
    }

    @Nested
    @Tag("slow")
    class FromPostgresqlIntoSqlite extends Contract {
        FromPostgresqlIntoSqlite() {
            super(DatabaseUnderTest.POSTGRESQL, DatabaseUnderTest.SQLITE);
        }
    }

    abstract static class Contract {

        private final DatabaseUnderTest source;
        private final DatabaseUnderTest target;
        @TempDir Path folder;
        private String address;

        Contract(DatabaseUnderTest source, DatabaseUnderTest target) {
            this.source = source;
            this.target = target;
        }

        @BeforeEach
        void fill() {
            address = source.freshAddress(folder);
            try (Database database = Database.open(address)) {
                FilledData.fill(database);
            }
        }

        @Test
        void everythingComesBackAsItWas() {
            Map<String, List<String>> before = rowsAt(address);
            assertThat(before).hasSizeGreaterThan(20);
            before.forEach((table, rows) -> assertThat(rows).as(table).isNotEmpty());

            BackUp.Done done = backUp();
            String elsewhere = target.freshAddress(folder);
            assertThat(new Restore(CLOCK).run(done.file(), elsewhere)).isEmpty();

            assertThat(rowsAt(elsewhere)).isEqualTo(before);
            VerifyData.Report report = new VerifyData().run(elsewhere);
            assertThat(report.faults()).isEmpty();
            assertThat(report.events()).isEqualTo(done.events()).isPositive();
        }

        @Test
        void aCopyIsOneFileAndLeavesNothingBesideIt() throws IOException {
            Path copies = folder.resolve("copies");
            new BackUp(CLOCK).run(address, copies, Optional.empty());

            try (Stream<Path> files = Files.list(copies)) {
                assertThat(files.map(file -> file.getFileName().toString()))
                        .containsExactly("jarwise-20260507-054000.db");
            }
        }

        @Test
        void aCopyIsMadeBesideARunningServer() {
            try (Database running = Database.open(address);
                    ServerLock lock = running.lockForServer()) {
                assertThat(lock).isNotNull();
                assertThat(backUp().file()).exists();
            }
        }

        @Test
        void aCopyNeverOverwritesAFile() throws IOException {
            Path there = Files.writeString(folder.resolve("there.db"), "mine");

            assertThatThrownBy(() -> new BackUp(CLOCK).run(address, folder, Optional.of(there)))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("copy.exists");
            assertThat(there).hasContent("mine");
        }

        @Test
        void aDamagedCopyIsRefusedAndTheDataStay() throws IOException {
            Path copy = backUp().file();
            try (RandomAccessFile damaged = new RandomAccessFile(copy.toFile(), "rw")) {
                damaged.setLength(damaged.length() / 3);
            }
            String elsewhere = target.freshAddress(folder);
            Database.open(elsewhere).close();
            Map<String, List<String>> before = rowsAt(elsewhere);

            assertThatThrownBy(() -> new Restore(CLOCK).run(copy, elsewhere))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("copy.damaged");
            assertThat(rowsAt(elsewhere)).isEqualTo(before);
        }

        @Test
        void aCopyWithAnAlteredEventIsRefused() {
            Path copy = backUp().file();
            alterAnEvent(copy.toString());

            assertThatThrownBy(() -> new Restore(CLOCK).run(copy, target.freshAddress(folder)))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("copy.damaged");
        }

        @Test
        void nothingIsRestoredUnderARunningServer() {
            Path copy = backUp().file();
            String elsewhere = target.freshAddress(folder);
            try (Database running = Database.open(elsewhere);
                    ServerLock lock = running.lockForServer()) {
                assertThat(lock).isNotNull();
                assertThatThrownBy(() -> new Restore(CLOCK).run(copy, elsewhere))
                        .isInstanceOf(Refused.class)
                        .hasMessageContaining("store.second-server");
            }
        }

        @Test
        void verifyFindsAnAlteredEvent() {
            alterAnEvent(address);

            assertThat(new VerifyData().run(address).faults())
                    .extracting(Message::key)
                    .contains("verify.chain");
        }

        @Test
        void verifyFindsACountThatIsNotTheFold() {
            try (Database database = Database.open(address)) {
                database.write(
                        handle ->
                                handle.execute(
                                        "update sample_count set individuals = individuals + 1"));
            }

            assertThat(new VerifyData().run(address).faults())
                    .extracting(Message::key)
                    .containsExactly("verify.read-model");
        }

        private BackUp.Done backUp() {
            return new BackUp(CLOCK).run(address, folder, Optional.empty());
        }
    }

    @TempDir Path folder;

    @Test
    void dataThatWereThereAreMovedAsideNotOverwritten() {
        String one = folder.resolve("one").toString();
        String two = folder.resolve("two").toString();
        try (Database database = Database.open(one)) {
            FilledData.fill(database);
        }
        Database.open(two).close();
        Map<String, List<String>> filled = rowsAt(one);
        Map<String, List<String>> empty = rowsAt(two);
        Path copy = new BackUp(CLOCK).run(two, folder, Optional.empty()).file();

        Path aside = new Restore(CLOCK).run(copy, one).orElseThrow();

        assertThat(rowsAt(one)).isEqualTo(empty);
        assertThat(rowsAt(aside.toString())).isEqualTo(filled);
    }

    @Test
    @Tag("slow")
    void aDatabaseOnAServerThatHasRowsIsNotOverwritten() {
        String address = DatabaseUnderTest.POSTGRESQL.freshAddress(folder);
        try (Database database = Database.open(address)) {
            FilledData.fill(database);
        }
        Map<String, List<String>> before = rowsAt(address);
        Path copy = new BackUp(CLOCK).run(address, folder, Optional.empty()).file();

        assertThatThrownBy(() -> new Restore(CLOCK).run(copy, address))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("copy.not-empty");
        assertThat(rowsAt(address)).isEqualTo(before);
    }

    @Test
    void aMistypedFolderIsNoEmptySetOfData() {
        String nowhere = folder.resolve("nowhere").toString();

        assertThatThrownBy(() -> new VerifyData().run(nowhere))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("store.no-data");
        assertThatThrownBy(() -> new BackUp(CLOCK).run(nowhere, folder, Optional.empty()))
                .isInstanceOf(Refused.class);
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }

    private static Map<String, List<String>> rowsAt(String address) {
        try (Database database = Database.open(address)) {
            return FilledData.rows(database);
        }
    }

    private static void alterAnEvent(String address) {
        try (Database database = Database.open(address)) {
            database.write(
                    handle ->
                            handle.execute("update event set person = 'SC-2' where position = 3"));
        }
    }
}
