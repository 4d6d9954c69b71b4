package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.plan.Withdrawal;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SamplingMethod;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.Row;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the store of planned rounds promises, on both databases. */
class RoundPlanStoreContractTest {

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
        private static final RoundPlan SECOND = RoundPlans.small("2026-05-11-b", "B-");

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private RoundPlanStore plans;
        private RoundStore rounds;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            plans = new RoundPlanStore(database);
            rounds = new RoundStore(database);
            for (String slug : List.of("lane", "other")) {
                database.write(
                        handle -> {
                            Row.of("nursery")
                                    .with("slug", slug)
                                    .with("name", slug)
                                    .with("zone", "UTC")
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
        void givesAPlanBackAsItWas() {
            plans.put("lane", FIRST);

            assertThat(plans.find("lane", FIRST.id())).contains(FIRST);
            assertThat(plans.find("other", FIRST.id())).isEmpty();
            assertThat(plans.find("lane", "2026-05-11-z")).isEmpty();
            assertThat(plans.ofJar("lane", new SampleCode("A-2"))).contains(FIRST);
            assertThat(plans.ofJar("other", new SampleCode("A-2"))).isEmpty();
        }

        @Test
        void listsPlansByDayThenName() {
            plans.put("lane", SECOND);
            plans.put("lane", FIRST);

            assertThat(plans.plans("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .containsExactly(FIRST, SECOND);
            assertThat(plans.plans("lane", RoundPlans.DAY.plusDays(1), RoundPlans.DAY.plusDays(9)))
                    .isEmpty();
        }

        @Test
        void refusesANameOrACodeThatIsTaken() {
            plans.put("lane", FIRST);

            assertThatThrownBy(() -> plans.put("lane", FIRST))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("Maybe");
            assertThatThrownBy(() -> plans.put("lane", RoundPlans.small("2026-05-11-b", "A-")))
                    .isInstanceOfAny(UnableToExecuteStatementException.class, InvalidInput.class);
            assertThat(plans.find("lane", "2026-05-11-b")).as("all or nothing").isEmpty();
            plans.put("other", RoundPlans.small("2026-05-11-a", "A-"));
        }

        @Test
        void withdrawsOnceAndKeepsTheRound() {
            plans.put("lane", FIRST);
            Withdrawal rain =
                    new Withdrawal(Instant.parse("2026-05-08T06:00:00Z"), "SC-1", "Wet leaves");
            plans.withdraw("lane", FIRST.id(), rain);

            assertThat(plans.withdrawals("lane")).isEqualTo(Map.of(FIRST.id(), rain));
            assertThat(plans.find("lane", FIRST.id())).contains(FIRST);
            assertThatThrownBy(() -> plans.withdraw("lane", FIRST.id(), rain))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("Maybe");
            assertThat(plans.withdrawals("other")).isEmpty();
        }

        @Test
        void aSecondRoundOfTheDayAddsToWhatIsPlanned() {
            rounds.put("lane", round(SamplingMethod.WASH, stop("P1-B3", 8), stop("H2-B4", 6)));
            rounds.put("lane", round(SamplingMethod.TAP, stop("H2-B4", 20)));
            Round more = round(SamplingMethod.WASH, stop("H2-B4", 20), stop("H3-B2", 1));

            rounds.addTo("lane", more);

            assertThat(rounds.rounds("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .containsExactlyInAnyOrder(
                            round(
                                    SamplingMethod.WASH,
                                    stop("P1-B3", 8),
                                    stop("H2-B4", 26),
                                    stop("H3-B2", 1)),
                            round(SamplingMethod.TAP, stop("H2-B4", 20)));

            rounds.takeFrom("lane", more);

            assertThat(rounds.rounds("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .contains(round(SamplingMethod.WASH, stop("P1-B3", 8), stop("H2-B4", 6)));
        }

        @Test
        void aBenchWithOneRandomSampleCountsAsRandom() {
            Round.Stop targeted = new Round.Stop("P1-B3", 2, Purpose.TARGETED);
            rounds.addTo("lane", round(SamplingMethod.WASH, targeted));
            rounds.addTo("lane", round(SamplingMethod.WASH, stop("P1-B3", 1)));
            rounds.addTo("lane", round(SamplingMethod.WASH, targeted));

            assertThat(rounds.rounds("lane", RoundPlans.DAY, RoundPlans.DAY))
                    .containsExactly(round(SamplingMethod.WASH, stop("P1-B3", 5)));
        }

        private static Round round(SamplingMethod method, Round.Stop... stops) {
            return new Round(RoundPlans.DAY, method, List.of(stops));
        }

        private static Round.Stop stop(String bench, int samples) {
            return new Round.Stop(bench, samples, Purpose.RANDOM);
        }
    }
}
