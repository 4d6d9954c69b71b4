package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.stats.count.Observation;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ChanceAboveThresholdTest {

    private static final DensityEstimator LINE =
            DensityEstimator.standard().withActionThreshold(0.2);

    @ParameterizedTest
    @EnumSource
    void isTheOneOfTheEstimate(IntervalMethod method) {
        Detection lossy =
                new Detection(DetectionShare.measured(60, 100), DetectionShare.measured(9, 10));
        for (DensityEstimator estimator :
                List.of(LINE, LINE.withDetection(lossy), LINE.withGivenK(0.8))) {
            DensityEstimator used = estimator.withMethod(method);
            isSame(used, counts(3, 0, 1, 9));
            isSame(used, counts(0, 0, 0));
            isSame(used, counts(4));
            isSame(used, counts(0));
        }
    }

    @ParameterizedTest
    @EnumSource
    void isNoneWithoutALine(IntervalMethod method) {
        isSame(DensityEstimator.standard().withMethod(method), counts(3, 0, 1, 9));
    }

    private static void isSame(DensityEstimator estimator, List<Observation> counts) {
        assertThat(estimator.chanceAboveThreshold(counts))
                .isEqualTo(estimator.estimate(counts).probabilityAboveThreshold());
    }

    private static List<Observation> counts(int... individuals) {
        return IntStream.of(individuals).mapToObj(n -> new Observation(n, 10, 1)).toList();
    }
}
