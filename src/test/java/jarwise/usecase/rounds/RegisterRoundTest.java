package jarwise.usecase.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.sample.CollectedSample;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.site.CropLot;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RegisterRoundTest {

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

        private static final RoundPlan FIRST = RoundPlans.small("2026-05-11-a", "A-");

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private RegisterRound register;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            register = new RegisterRound(database);
            SiteStore sites = new SiteStore(database);
            sites.save(new Nursery("lane", "Lane", ZoneOffset.UTC, "en"));
            sites.save(
                    "lane",
                    new CropLot(
                            "L-117",
                            "Gerbera",
                            "Rubia Tarn",
                            Optional.empty(),
                            Optional.empty(),
                            false));
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void everyJarIsAPlannedSampleWithItsFacts() {
            register.run("lane", FIRST);

            CollectedSample jar = sample("A-1");
            assertThat(jar.state()).isEqualTo(SampleState.PLANNED);
            assertThat(jar.method()).isEqualTo(SamplingMethod.WASH);
            assertThat(jar.purpose()).isEqualTo(Purpose.RANDOM);
            assertThat(jar.place().house()).contains("H2");
            assertThat(jar.place().bench()).contains("H2-B4");
            assertThat(jar.place().cropLot()).contains("L-117");
            assertThat(jar.place().crop()).contains("Gerbera");
            assertThat(jar.place().variety()).contains("Rubia Tarn");
            assertThat(jar.samplingUnits()).isEqualTo(10);
            assertThat(sample("A-3").purpose()).isEqualTo(Purpose.TARGETED);
            assertThat(sample("A-4").role()).isEqualTo(SampleRole.BLANK);
            assertThat(sample("A-4").place()).isEqualTo(CollectedSample.Place.UNKNOWN);
            assertThat(new EventStore(database).staleSamples("lane")).isEmpty();
        }

        @Test
        void whatIsPlannedForTheDayGrows() {
            register.run("lane", FIRST);
            register.run("lane", RoundPlans.small("2026-05-11-b", "B-"));

            assertThat(new RoundStore(database).rounds("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .containsExactly(
                            new Round(
                                    RoundPlans.DAY,
                                    SamplingMethod.WASH,
                                    List.of(
                                            new Round.Stop("H2-B4", 2, Purpose.RANDOM),
                                            new Round.Stop("P1-B3", 4, Purpose.RANDOM))));
        }

        @Test
        void writesNothingWhereOneCodeIsTaken() {
            register.run("lane", FIRST);
            long events = new EventStore(database).count();

            assertThatThrownBy(() -> register.run("lane", RoundPlans.small("2026-05-11-b", "A-")))
                    .isInstanceOf(InvalidInput.class);

            assertThat(new EventStore(database).count()).isEqualTo(events);
            assertThat(new RoundPlanStore(database).find("lane", "2026-05-11-b")).isEmpty();
            assertThat(new RoundStore(database).rounds("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .singleElement()
                    .extracting(Round::samples)
                    .isEqualTo(3);
        }

        @Test
        void showsARoundWithWhereItsJarsStand() {
            register.run("lane", FIRST);
            ShowRounds rounds = new ShowRounds(database);

            ShowRounds.Shown shown = rounds.find("lane", FIRST.id()).orElseThrow();

            assertThat(shown.plan()).isEqualTo(FIRST);
            assertThat(shown.jars()).hasSize(4);
            assertThat(shown.state()).isEqualTo(RoundState.PLANNED);
            assertThat(shown.withdrawal()).isEmpty();
            assertThat(rounds.run("lane", RoundPlans.DAY, RoundPlans.DAY)).containsExactly(shown);
            assertThat(rounds.find("lane", "none")).isEmpty();
        }

        private CollectedSample sample(String code) {
            return new SampleStore(database).find("lane", new SampleCode(code)).orElseThrow();
        }
    }
}
