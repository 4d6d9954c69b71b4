package jarwise.usecase.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.sample.SampleCode;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Press;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was unsure gets its name later, in the cell where it lies; on both databases. */
class IdentifyUnsureTest {

    private static final String SLUG = "lane";
    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");
    private static final SampleCode JAR = new SampleCode("J-1");
    private static final StageKey UNSURE = new StageKey("unsure", "any");
    private static final StageKey ADULT = new StageKey("FRANOC", "adult");

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

        @TempDir Path folder;
        private final DatabaseUnderTest kind;
        private Database database;
        private EventStore events;
        private IdentifyUnsure identify;

        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            new SiteStore(database).save(new Nursery(SLUG, "Lane", ZoneOffset.UTC, "en"));
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
            events = new EventStore(database);
            identify = new IdentifyUnsure(new SampleLog(database, () -> NOW), pests);
            read("phone-a", unsure("A1"), unsure("B1"), unsure("B1"), done("A1"), done("B1"));
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void oneOfACellGetsItsNameThereAndTheRestStaysUnsure() {
            say("1", "FRANOC:adult", "B1");

            assertThat(fold().tally().individuals()).isEqualTo(Map.of(UNSURE, 2L, ADULT, 1L));
            assertThat(Press.of(fold()))
                    .extracting(Press::counted)
                    .containsExactlyInAnyOrder(
                            unsure("A1"),
                            unsure("B1"),
                            new Deed.Counted("FRANOC", "adult", 1, Optional.of("B1")));
            SampleEvent slip = last(2);
            assertThat(slip.deed())
                    .isEqualTo(new Deed.Voided(new EventId("phone-a", 2), "identified"));
            assertThat(slip.person()).isEqualTo("SC-2");
            assertThat(events.staleSamples(SLUG)).isEmpty();
        }

        @Test
        void allGetTheirNameAtOnceWhereverTheyLie() {
            say("3", "FRANOC:adult", "");

            assertThat(fold().tally().individuals()).isEqualTo(Map.of(ADULT, 3L));
            assertThat(IdentifyUnsure.waiting(fold())).isEmpty();
        }

        @Test
        void ofANumberTypedByHandOnlyTheNamedOnesAreTaken() {
            read("desk-x", new Deed.Counted("unsure", "any", 5, Optional.empty()));

            say("3", "FRANOC:adult", "");
            say("3", "FRANOC:larva2", "");

            assertThat(fold().tally().individuals())
                    .isEqualTo(Map.of(UNSURE, 2L, ADULT, 3L, new StageKey("FRANOC", "larva2"), 3L));
        }

        @Test
        void whatASecondReaderSawInTheSameCellIsNotNamedIntoTheCount() {
            read("phone-b", unsure("A1"), done("A1"));
            assertThat(fold().tally().aside()).isEqualTo(Map.of(UNSURE, 1L));

            assertThatThrownBy(() -> say("2", "FRANOC:adult", "A1"))
                    .isInstanceOf(FormRefused.class);
            say("1", "FRANOC:adult", "A1");

            assertThat(fold().tally().aside()).isEqualTo(Map.of(UNSURE, 1L));
            assertThat(fold().tally().individuals()).isEqualTo(Map.of(UNSURE, 2L, ADULT, 1L));
        }

        @ParameterizedTest
        @CsvSource({
            "4, FRANOC:adult, ''",
            "3, FRANOC:adult, B1",
            "1, FRANOC:adult, C1",
            "0, FRANOC:adult, ''",
            "'', FRANOC:adult, ''",
            "1.5, FRANOC:adult, ''",
            "1, FRANOC:wing, ''",
            "1, unsure:any, ''",
            "1, FRANOC, ''",
            "1, '', ''"
        })
        void whatCannotBeIsRefusedAndNothingIsWritten(String number, String stage, String cell) {
            long before = events.count();

            assertThatThrownBy(() -> say(number, stage, cell)).isInstanceOf(FormRefused.class);

            assertThat(events.count()).isEqualTo(before);
        }

        private void say(String number, String stage, String cell) {
            Map<String, String> typed = Map.of("individuals", number, "stage", stage, "cell", cell);
            identify.run(SLUG, "SC-2", JAR, Fields.of(typed));
        }

        private SampleFold fold() {
            return events.fold(SLUG, JAR).orElseThrow();
        }

        private SampleEvent last(int fromEnd) {
            List<SampleEvent> all = events.after(0, 100);
            return all.get(all.size() - fromEnd);
        }

        private void read(String device, Deed... deeds) {
            List<SampleEvent> read = new ArrayList<>();
            for (Deed deed : deeds) {
                EventId id = new EventId(device, read.size() + 1L);
                read.add(new SampleEvent(id, JAR, NOW, "SC-1", Optional.empty(), deed));
            }
            events.append(SLUG, read);
        }
    }

    private static Deed.Counted unsure(String cell) {
        return new Deed.Counted("unsure", "any", 1, Optional.of(cell));
    }

    private static Deed done(String cell) {
        return new Deed.CellDone(cell, false);
    }
}
