package jarwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyVerdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class ComparisonPlanTest {

    private static ComparisonOutlook outlook(double efficacy, int jars, long seed) {
        return new ComparisonPlan(0.9, efficacy, 0.8, jars, 10, 1.2)
                .outlook(EfficacyEstimator.standard(), 150, seed, done -> {});
    }

    @Test
    void chancesAddUpAndTheSameSeedSaysTheSame() {
        ComparisonOutlook outlook = outlook(0.9, 6, 3);

        assertThat(outlook.probabilities().values().stream().mapToDouble(p -> p).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(outlook(0.9, 6, 3)).isEqualTo(outlook);
        assertThat(outlook(0.9, 6, 4)).isNotEqualTo(outlook);
    }

    @Test
    void moreJarsGiveTheRightVerdictMoreOften() {
        assertThat(outlook(0.97, 40, 1).probability(EfficacyVerdict.WORKED))
                .isGreaterThan(outlook(0.97, 8, 1).probability(EfficacyVerdict.WORKED) + 0.2);
        assertThat(outlook(0.2, 40, 1).probability(EfficacyVerdict.FAILED))
                .isGreaterThan(outlook(0.2, 8, 1).probability(EfficacyVerdict.FAILED) + 0.2);
    }

    @Test
    void aTreatmentThatTakesAllIsSeenAsOne() {
        ComparisonOutlook outlook = outlook(1, 12, 1);

        assertThat(outlook.upperMedian()).hasValue(1);
        assertThat(outlook.probability(EfficacyVerdict.WORKED)).isGreaterThan(0.9);
    }

    @Test
    void impossibleNumbersAreRefused() {
        assertThatThrownBy(() -> new ComparisonPlan(0, 0.9, 1, 6, 1, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ComparisonPlan(1, 1.1, 1, 6, 1, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("efficacy is 1.1");
        assertThatThrownBy(() -> new ComparisonPlan(1, 0.9, 1, 0, 1, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ComparisonPlan(1e9, 0.9, 1, 6, 1, 1))
                .isInstanceOf(InvalidInput.class);
    }
}
