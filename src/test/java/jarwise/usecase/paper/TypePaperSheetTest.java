package jarwise.usecase.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.rounds.RegisterRound;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypePaperSheetTest {

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

        private static final ZoneId PARIS = ZoneId.of("Europe/Paris");
        private static final Nursery LANE = new Nursery("lane", "Lane", PARIS, "en");
        private static final RoundPlan ROUND = RoundPlans.small("2026-05-11-a", "A-");
        private static final Instant NOW = Instant.parse("2026-05-11T16:00:00Z");

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private TypePaperSheet sheet;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            new SiteStore(database).save(LANE);
            new RegisterRound(database).run("lane", ROUND);
            sheet = new TypePaperSheet(database, () -> NOW);
        }

        @AfterEach
        void close() {
            database.close();
        }

        private int type(String... typed) {
            Map<String, String> fields = new HashMap<>(Map.of("day", "2026-05-11"));
            for (String one : typed) {
                String[] parts = one.split("=", 2);
                fields.put(parts[0], parts[1]);
            }
            return sheet.run("lane", PARIS, ROUND, "SC-1", Fields.of(fields));
        }

        private CollectedSample sample(String code) {
            return new SampleStore(database).find("lane", new SampleCode(code)).orElseThrow();
        }

        @Test
        void a_row_becomes_the_steps_it_tells_of_at_the_times_that_were_written() {
            int rows =
                    type(
                            "cut:A-1=9",
                            "fluid:A-1=soap",
                            "shake:A-1=45",
                            "washed:A-1=9.05",
                            "frozen:A-1=0915",
                            "remarks:A-1=foam",
                            "cut:A-2=10");

            assertThat(rows).isEqualTo(2);
            CollectedSample first = sample("A-1");
            assertThat(first.state()).isEqualTo(SampleState.FROZEN);
            assertThat(first.samplingUnits()).isEqualTo(9);
            assertThat(first.collectedOn()).contains(RoundPlans.DAY);
            assertThat(first.place().bench()).contains("H2-B4");
            assertThat(first.wash().shakeSeconds()).hasValue(45);
            assertThat(first.wash().condition()).contains("foam");
            assertThat(first.times().washed()).contains(Instant.parse("2026-05-11T07:05:00Z"));
            assertThat(first.times().freezerIn()).contains(Instant.parse("2026-05-11T07:15:00Z"));
            assertThat(first.times().cut()).as("paper does not say when").isEmpty();
            assertThat(sample("A-2").state()).isEqualTo(SampleState.CUT);
            assertThat(sample("A-3").state()).isEqualTo(SampleState.PLANNED);
            assertThat(sheet.open("lane", ROUND)).hasSize(2);
            assertThat(new EventStore(database).staleSamples("lane")).isEmpty();
        }

        @Test
        void a_remark_on_a_jar_that_was_not_washed_stays_with_it() {
            type("cut:A-1=9", "remarks:A-1=fell over");
            assertThat(sample("A-1").attributes()).containsEntry("remarks", "fell over");
        }

        @Test
        void a_blank_wash_has_no_growing_points() {
            type("fluid:A-4=alcohol");
            assertThat(sample("A-4").state()).isEqualTo(SampleState.WASHED);
            assertThat(faultOf("cut:A-4=3", "cut:A-4")).isEqualTo("paper.control-cut");
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = ';',
                value = {
                    "day=; day; form.needed",
                    "day=2026-05-12; day; form.day.future",
                    "fluid:A-1=soap; cut:A-1; form.needed",
                    "cut:A-1=ten; cut:A-1; form.number",
                    "cut:A-1=0; cut:A-1; form.number",
                    "cut:A-1=NaN; cut:A-1; form.number",
                    "cut:A-1=10,fluid:A-1=wine; fluid:A-1; form.word",
                    "cut:A-1=10,shake:A-1=-4; shake:A-1; form.whole",
                    "cut:A-1=10,washed:A-1=25:00; washed:A-1; paper.time",
                    "cut:A-1=10,washed:A-1=12:5; washed:A-1; paper.time",
                    "cut:A-1=10,washed:A-1=18:01; washed:A-1; paper.future",
                    "cut:A-1=10,frozen:A-1=12:00; washed:A-1; paper.frozen-unwashed",
                    "cut:A-1=10,washed:A-1=12:00,frozen:A-1=11:59; frozen:A-1; paper.order",
                    "other=1; day; paper.nothing"
                })
        void a_fault_is_said_beside_its_field_and_nothing_is_written(
                String typed, String field, String message) {
            assertThat(faultOf("cut:A-2=10," + typed, field, typed)).isEqualTo(message);
            assertThat(sheet.open("lane", ROUND)).hasSize(4);
        }

        private String faultOf(String typed, String field, String alone) {
            return faultOf(alone.startsWith("other") ? alone : typed, field);
        }

        private String faultOf(String typed, String field) {
            FormRefused refused =
                    catchThrowableOfType(FormRefused.class, () -> type(typed.split(",", -1)));
            return Objects.requireNonNull(refused.faults().get(field)).key();
        }

        @Test
        void a_jar_of_which_something_was_noted_meanwhile_is_not_typed_over() {
            type("cut:A-1=9");
            assertThat(faultOf("cut:A-1=10,cut:A-2=10", "cut:A-1"))
                    .isEqualTo("paper.noted-already");
            assertThat(sample("A-1").samplingUnits()).isEqualTo(9);
            assertThat(sample("A-2").state()).isEqualTo(SampleState.PLANNED);
        }
    }
}
