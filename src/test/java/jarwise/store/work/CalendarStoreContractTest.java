package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.Row;
import jarwise.wire.calendar.CalendarEntry;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the store of calendars promises, on both databases. */
class CalendarStoreContractTest {

    private static final Instant START = Instant.parse("2026-03-27T17:00:00.000001Z");

    @Nested
    class OnSqlite extends Contract {
        OnSqlite() {
            super(DatabaseUnderTest.SQLITE);
        }
    }

    @Nested
    @Tag("slow")
    class OnPostgresql extends Contract {
        OnPostgresql() {
            super(DatabaseUnderTest.POSTGRESQL);
        }
    }

    abstract static class Contract {

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private CalendarStore calendars;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            calendars = new CalendarStore(database);
            for (String slug : List.of("lane", "other")) {
                database.write(
                        handle -> {
                            Row.of("nursery")
                                    .with("slug", slug)
                                    .with("name", slug)
                                    .with("zone", "Europe/Paris")
                                    .with("language", "en")
                                    .insert(handle);
                            return slug;
                        });
            }
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void anEntryIsKeptWholeAndANewVersionTakesItsPlace() {
            CalendarEntry first = entry(0, 4, false);
            calendars.put("lane", "read H2-B4", first);
            assertThat(calendars.entries("lane"))
                    .containsOnlyKeys("read H2-B4")
                    .containsValue(first);

            CalendarEntry second = entry(1, 6, true);
            calendars.put("lane", "read H2-B4", second);
            calendars.put("lane", "no entry T-1", first);
            assertThat(calendars.entries("lane"))
                    .hasSize(2)
                    .containsEntry("read H2-B4", second)
                    .containsEntry("no entry T-1", first);
            assertThat(calendars.entries("other")).isEmpty();
        }

        @Test
        void whatEndedBeforeAMomentIsForgottenAndWhatEndsThenIsNot() {
            calendars.put("lane", "early", entry(0, 1, false));
            calendars.put("lane", "then", entry(0, 2, false));
            calendars.put("other", "early", entry(0, 1, false));
            calendars.forget("lane", START.plusSeconds(2 * 3600));
            assertThat(calendars.entries("lane")).containsOnlyKeys("then");
            assertThat(calendars.entries("other")).containsOnlyKeys("early");
        }

        @Test
        void oneSecretOpensACalendarUntilANewOneOrNone() {
            assertThat(calendars.token("lane")).isEmpty();
            calendars.open("lane", "first", START);
            calendars.open("lane", "second", START.plusSeconds(1));
            assertThat(calendars.token("lane")).hasValue("second");
            assertThat(calendars.token("other")).isEmpty();

            calendars.close("lane", START.plusSeconds(2));
            assertThat(calendars.token("lane")).isEmpty();
        }

        private static CalendarEntry entry(int sequence, int hours, boolean cancelled) {
            return new CalendarEntry(
                    "b4@desk",
                    new CalendarEntry.Times(START, START.plusSeconds(hours * 3600L)),
                    new CalendarEntry.Text(
                            "Read H2-B4", "It begins, “then” it ends.", "H2-B4", "READING"),
                    new CalendarEntry.Version(sequence, START, cancelled));
        }
    }
}
