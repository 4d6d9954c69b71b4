package jarwise.usecase.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import jarwise.numeric.SeededRandom;
import jarwise.plan.BenchSpots;
import jarwise.plan.PlannedJar;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.plan.Spot;
import jarwise.sample.CollectedSample;
import jarwise.sample.LabelCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.planning.PlanSite;
import jarwise.usecase.planning.PlannedRound;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SaveRoundTest {

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

        private static final String SLUG = PlanSite.SLUG;
        private static final Instant NOW = PlanSite.NOW.toInstant();

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private PlanSite site;
        private SaveRound save;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            site = new PlanSite(database);
            SeededRandom codes = new SeededRandom(1);
            save = new SaveRound(database, InstantSource.fixed(NOW), codes::below);
        }

        @AfterEach
        void close() {
            database.close();
        }

        private PlannedRound planned(String jars) {
            return site.plan(
                    "stand",
                    "H2-A1/L-1,P1-B1/L-2",
                    "jars",
                    jars,
                    "seed",
                    "12",
                    "blank",
                    "1",
                    "spike",
                    "1",
                    "spiked",
                    "25");
        }

        /** The same seed gives the same plan on either database: both are held to the drawing. */
        @Test
        void jarsStandWhereTheSeedPutsThem() {
            RoundPlan plan = find(save.run(SLUG, planned("6"), "SC-1"));

            assertThat(plan.question()).isEqualTo(RoundQuestion.DETECT);
            assertThat(plan.seed()).isEqualTo(12);
            assertThat(plan.plannedBy()).isEqualTo("SC-1");
            assertThat(plan.plannedAt()).isEqualTo(NOW);
            assertThat(plan.numbers())
                    .containsEntry("density", "0.1")
                    .containsEntry("jars", "6")
                    .containsKeys("k", "efficiency", "sensitivity", "subject")
                    .doesNotContainKeys("sent", "form_token");
            assertThat(spots(plan, "P1-B1")).isEqualTo(BenchSpots.draw("P1-B1", 4, 12));
            assertThat(spots(plan, "H2-A1")).isEqualTo(BenchSpots.draw("H2-A1", 2, 12));
            assertThat(plan.jars().get(0).bench()).as("propagation first").isEqualTo("P1-B1");
            assertThat(plan.jars())
                    .allSatisfy(jar -> LabelCode.parse(jar.code().text()))
                    .extracting(PlannedJar::role)
                    .endsWith(SampleRole.CROP, SampleRole.BLANK, SampleRole.SPIKE);
        }

        private static List<Spot> spots(RoundPlan plan, String bench) {
            return plan.jars().stream()
                    .filter(jar -> jar.bench().equals(bench))
                    .map(jar -> jar.spot().orElseThrow())
                    .toList();
        }

        @Test
        void aSpikedJarKnowsWhatWasPutIn() {
            RoundPlan plan = find(save.run(SLUG, planned("6"), "SC-1"));
            PlannedJar spiked = plan.jars().get(plan.jars().size() - 1);

            assertThat(sample(spiked).role()).isEqualTo(SampleRole.SPIKE);
            assertThat(sample(spiked).known()).hasValue(25);
        }

        @Test
        void aFormSentTwiceIsOneRoundAndAnotherRoundGetsTheNextLetter() {
            String first = save.run(SLUG, planned("6"), "SC-1");

            assertThat(first).isEqualTo("2026-05-11-a");
            assertThat(save.run(SLUG, planned("6"), "SC-1")).isEqualTo(first);
            assertThat(save.run(SLUG, planned("7"), "SC-1")).isEqualTo("2026-05-11-b");
            assertThat(samplesPlanned()).isEqualTo(6 + 7);
        }

        private int samplesPlanned() {
            return new RoundStore(database)
                    .rounds(SLUG, PlanSite.MONDAY, PlanSite.MONDAY).stream()
                            .mapToInt(Round::samples)
                            .sum();
        }

        @Test
        void whatIsBlockedIsNotSaved() {
            site.sprayed("P1-B1", Instant.parse("2026-05-10T20:00:00Z"), 24);

            assertThatThrownBy(() -> save.run(SLUG, planned("6"), "SC-1"))
                    .isInstanceOf(Refused.class);
            assertThat(new EventStore(database).count()).isZero();
        }

        @Test
        void aWithdrawnRoundKeepsTheJarsThatAreCut() {
            String id = save.run(SLUG, planned("6"), "SC-1");
            PlannedJar cut = find(id).jars().get(0);
            cut(cut);
            WithdrawRound withdraw = new WithdrawRound(database, InstantSource.fixed(NOW));

            assertThatThrownBy(
                            () -> withdraw.run(SLUG, id, "SC-1", Fields.of(Map.of("reason", " "))))
                    .isInstanceOf(FormRefused.class);
            withdraw.run(SLUG, id, "HG-1", Fields.of(Map.of("reason", "Wet leaves")));

            assertThat(sample(cut).state()).isEqualTo(SampleState.CUT);
            assertThat(find(id).jars().subList(1, 8))
                    .allSatisfy(
                            jar ->
                                    assertThat(sample(jar).state())
                                            .isEqualTo(SampleState.DISCARDED));
            assertThat(samplesPlanned()).as("the one that is cut").isEqualTo(1);
            ShowRounds.Shown shown = new ShowRounds(database).find(SLUG, id).orElseThrow();
            assertThat(shown.withdrawal().orElseThrow().reason()).isEqualTo("Wet leaves");
            assertThatThrownBy(
                            () -> withdraw.run(SLUG, id, "HG-1", Fields.of(Map.of("reason", "x"))))
                    .isInstanceOf(FormRefused.class);
            assertThat(save.run(SLUG, planned("6"), "SC-1"))
                    .as("planned anew, since the first was withdrawn")
                    .isEqualTo("2026-05-11-b");
        }

        @Test
        void aRoundStandsWhereItsJarsStand() {
            String id = save.run(SLUG, planned("6"), "SC-1");
            ShowRounds rounds = new ShowRounds(database);
            assertThat(rounds.find(SLUG, id).orElseThrow().state()).isEqualTo(RoundState.PLANNED);

            find(id).jars().subList(0, 2).forEach(this::cut);
            assertThat(rounds.find(SLUG, id).orElseThrow().state())
                    .isEqualTo(RoundState.BEING_WALKED);

            find(id).jars().subList(2, 8).forEach(this::cut);
            assertThat(rounds.find(SLUG, id).orElseThrow().state()).isEqualTo(RoundState.TO_READ);
        }

        private void cut(PlannedJar jar) {
            Deed deed = new Deed.StepTaken(Step.CUT, Map.of(), Optional.empty(), Optional.empty());
            EventId id = new EventId("phone-" + jar.code(), 1);
            new EventStore(database)
                    .append(
                            SLUG,
                            List.of(
                                    new SampleEvent(
                                            id, jar.code(), NOW, "SC-1", Optional.empty(), deed)));
        }

        private RoundPlan find(String id) {
            return new RoundPlanStore(database).find(SLUG, id).orElseThrow();
        }

        private CollectedSample sample(PlannedJar jar) {
            return new SampleStore(database).find(SLUG, jar.code()).orElseThrow();
        }
    }
}
