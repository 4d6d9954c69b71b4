package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.numeric.SeededRandom;
import jarwise.stats.count.Observation;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
class BlockedTrialTest {

    private static TrialBench bench(String name, SeededRandom random, double level, double change) {
        return new TrialBench(
                name, Trials.drawn(random, level), Trials.drawn(random, level * change));
    }

    private static EfficacyTrial trial(long seed) {
        SeededRandom random = new SeededRandom(seed);
        return new EfficacyTrial(
                List.of(bench("t1", random, 0.3, 0.2), bench("t2", random, 3, 0.2)),
                List.of(bench("c1", random, 0.3, 1.2), bench("c2", random, 3, 1.2)));
    }

    private static EfficacyTrial asOneBenchAnArm(EfficacyTrial trial) {
        return EfficacyTrial.of(
                trial.treatedBefore(),
                trial.treatedAfter(),
                trial.checkBefore(),
                trial.checkAfter());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2})
    void benchesOfDifferentLevelMakeBlocksWorthWhile(long seed) {
        EfficacyTrial trial = trial(seed);
        for (EfficacyInterval interval : EfficacyInterval.values()) {
            EfficacyEstimator estimator = EfficacyEstimator.standard().withInterval(interval);
            EfficacyEstimate blocked = estimator.estimate(trial);
            EfficacyEstimate plain = estimator.estimate(asOneBenchAnArm(trial));

            assertThat(length(blocked)).isLessThan(length(plain));
            assertThat(blocked.logLikelihood()).isGreaterThan(plain.logLikelihood());
            assertThat(blocked.warnings()).contains(EfficacyWarnings.SEVERAL_BENCHES);
        }
    }

    private static double length(EfficacyEstimate estimate) {
        return Math.log1p(-estimate.lower().orElseThrow())
                - Math.log1p(-estimate.upper().orElseThrow());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2})
    void calibratedAndProfileIntervalsAreOfOneKind(long seed) {
        EfficacyTrial trial = trial(seed);
        EfficacyEstimate calibrated = EfficacyEstimator.standard().estimate(trial);
        EfficacyEstimate profile =
                EfficacyEstimator.standard().withInterval(EfficacyInterval.PROFILE).estimate(trial);

        assertThat(length(calibrated) / length(profile)).isBetween(0.95, 1.35);
    }

    @Test
    void oneBenchAnArmIsTheModelWithoutBlocks() {
        EfficacyTrial plain = Trials.drawn(5);
        EfficacyTrial named =
                new EfficacyTrial(
                        List.of(renamed("t", plain.treated().get(0))),
                        List.of(renamed("c", plain.check().get(0))));
        EfficacyEstimate expected = EfficacyEstimator.standard().estimate(plain);
        EfficacyEstimate estimate = EfficacyEstimator.standard().estimate(named);

        assertThat(estimate.interaction().orElseThrow())
                .isCloseTo(expected.interaction().orElseThrow(), within(1e-8));
        assertThat(estimate.standardError().orElseThrow())
                .isCloseTo(expected.standardError().orElseThrow(), within(1e-8));
        assertThat(estimate.lower()).isEqualTo(expected.lower());
    }

    private static TrialBench renamed(String name, TrialBench bench) {
        return new TrialBench(name, bench.before(), bench.after());
    }

    /** A house with a treated and a check part is one block. */
    @Test
    void theSameNameInBothArmsIsOneBlock() {
        SeededRandom random = new SeededRandom(8);
        List<TrialBench> treated =
                List.of(bench("h1", random, 0.4, 0.2), bench("h2", random, 2, 0.2));
        List<TrialBench> check =
                List.of(bench("h1", random, 0.4, 1.1), bench("h2", random, 2, 1.1));
        TrialColumns crossed = TrialColumns.of(TrialCell.of(new EfficacyTrial(treated, check)));
        TrialColumns nested = TrialColumns.of(TrialCell.of(trial(8)));

        assertThat(crossed.width()).isEqualTo(5); // h1, h2, treated, after, both
        assertThat(nested.width()).isEqualTo(6); // four benches, after, both
        assertThat(crossed.hasInteraction()).isTrue();
        assertThat(nested.hasInteraction()).isTrue();
    }

    @Test
    void benchesSampledOnlyOnceCannotTell() {
        List<Observation> jars = Trials.drawn(new SeededRandom(3), 1);
        EfficacyTrial trial =
                new EfficacyTrial(
                        List.of(
                                new TrialBench("t1", jars, List.of()),
                                new TrialBench("t2", List.of(), jars)),
                        List.of(
                                new TrialBench("c1", jars, List.of()),
                                new TrialBench("c2", List.of(), jars)));
        EfficacyEstimate estimate = EfficacyEstimator.standard().estimate(trial);

        assertThat(estimate.efficacy()).isEmpty();
        assertThat(estimate.verdict()).isEqualTo(EfficacyVerdict.CANNOT_TELL);
        assertThat(estimate.warnings()).contains(EfficacyWarnings.NOT_ON_THE_SAME_BENCHES);
    }
}
