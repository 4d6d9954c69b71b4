package jarwise.usecase.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.usecase.findings.Today.Due;
import jarwise.usecase.form.Fields;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundsToWalkTest {

    private static final LocalDate DAY = RoundPlans.DAY;
    private static final RoundPlan FIRST = RoundPlans.small("2026-05-11-a", "A-");

    @TempDir Path folder;
    private Database database;

    @BeforeEach
    void open() {
        database = Database.open(folder.toString());
        new SiteStore(database).save(new Nursery("lane", "Lane", ZoneOffset.UTC, "en"));
        new RegisterRound(database).run("lane", FIRST);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void namesTheRoundSoThatItsSheetIsFound() {
        new RegisterRound(database).run("lane", RoundPlans.small("2026-05-11-b", "B-"));

        assertThat(walks())
                .extracting(walk -> walk.name().orElseThrow(), walk -> walk.round().samples())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("2026-05-11-a", 3),
                        org.assertj.core.groups.Tuple.tuple("2026-05-11-b", 3));
    }

    @Test
    void asksOnlyForJarsThatAreNotCut() {
        cut("A-1", 1);

        assertThat(walks())
                .singleElement()
                .extracting(Due.Walk::round)
                .isEqualTo(
                        new Round(
                                DAY,
                                SamplingMethod.WASH,
                                List.of(new Round.Stop("P1-B3", 2, Purpose.RANDOM))));
        cut("A-2", 2);
        cut("A-3", 3);
        assertThat(walks()).as("the blank wash is no reason to walk").isEmpty();
    }

    @Test
    void forgetsARoundThatWasWithdrawnHalfWalked() {
        cut("A-1", 1);
        new WithdrawRound(database, InstantSource.fixed(RoundPlans.PLANNED_AT))
                .run("lane", FIRST.id(), "SC-1", Fields.of(Map.of("reason", "plants sold")));

        assertThat(walks()).isEmpty();
    }

    @Test
    void keepsARoundThatWasPlannedWithoutLabels() {
        Round round =
                new Round(
                        DAY.plusDays(1),
                        SamplingMethod.CARD,
                        List.of(new Round.Stop("P1-B3", 8, Purpose.RANDOM)));
        new RoundStore(database).put("lane", round);

        assertThat(walks()).hasSize(2).last().isEqualTo(new Due.Walk(round, Optional.empty()));
    }

    private void cut(String code, long sequence) {
        new EventStore(database)
                .append(
                        "lane",
                        List.of(
                                new SampleEvent(
                                        new EventId("phone-1", sequence),
                                        new SampleCode(code),
                                        RoundPlans.PLANNED_AT.plusSeconds(60),
                                        "SC-1",
                                        Optional.empty(),
                                        new Deed.StepTaken(
                                                Step.CUT,
                                                Map.of(),
                                                Optional.empty(),
                                                Optional.empty()))));
    }

    private List<Due.Walk> walks() {
        return new RoundsToWalk(database).run("lane", DAY, DAY.plusDays(7));
    }
}
