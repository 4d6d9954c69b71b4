package jarwise.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.plan.ComparisonPlan;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.usecase.planning.PlanAnswer.Drawn;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class ComparisonOutlooksTest {

    private static final int PATIENCE = 300;

    /** Asked again and again, as a page does; each time waits for up to a second. */
    @Test
    void saysHowFarItIsUntilItHasWhatTheCommandHas() {
        ComparisonPlan plan = new ComparisonPlan(0.5, 0.8, Double.POSITIVE_INFINITY, 4, 10, 1);
        EfficacyEstimator estimator = EfficacyEstimator.standard().withTarget(0.6);
        ComparisonOutlooks outlooks = new ComparisonOutlooks();

        int before = 0;
        Drawn drawn = outlooks.ask(plan, estimator);
        for (int i = 0; i < PATIENCE && drawn.outlook().isEmpty(); i++) {
            assertThat(drawn.done()).isBetween(before, ComparisonOutlooks.TRIALS);
            before = drawn.done();
            drawn = outlooks.ask(plan, estimator);
        }

        assertThat(drawn.outlook())
                .isEqualTo(
                        Optional.of(
                                plan.outlook(estimator, ComparisonOutlooks.TRIALS, 1, n -> {})));
        assertThat(drawn.done()).isEqualTo(ComparisonOutlooks.TRIALS);
    }
}
