package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.count.CommonKFit;
import jarwise.stats.count.CountData;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.KPrior;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalibratedInteractionTest {

    private static final double[] LEVELS = {0.001, 0.025, 0.5, 0.975, 0.999};

    private static double[] quantiles(EfficacyTrial trial) {
        CalibratedInteraction interaction =
                new CalibratedInteraction(trial, KPrior.standard(), 0.025);
        double[] result = new double[LEVELS.length];
        for (int i = 0; i < result.length; i++) {
            result[i] =
                    LEVELS[i] < 0.5
                            ? interaction.lower(LEVELS[i])
                            : interaction.upper(1 - LEVELS[i]);
        }
        return result;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void changingTheArmsTurnsTheDistributionRound(long seed) {
        EfficacyTrial trial = Trials.drawn(seed);
        double[] plain = quantiles(trial);
        double[] turned =
                quantiles(
                        new EfficacyTrial(
                                /* treated= */ trial.check(), /* check= */ trial.treated()));

        for (int i = 0; i < plain.length; i++) {
            assertThat(turned[i]).isCloseTo(-plain[plain.length - 1 - i], within(1e-6));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neitherTheUnitNorTheOrderOfTheJarsMatters(long seed) {
        EfficacyTrial trial = Trials.drawn(seed);
        double[] plain = quantiles(trial);
        Random random = new Random(seed);
        double[] changed =
                quantiles(
                        EfficacyTrial.of(
                                changed(trial.treatedBefore(), random),
                                changed(trial.treatedAfter(), random),
                                changed(trial.checkBefore(), random),
                                changed(trial.checkAfter(), random)));

        for (int i = 0; i < plain.length; i++) {
            assertThat(changed[i]).isCloseTo(plain[i], within(1e-9));
        }
    }

    private static List<Observation> changed(List<Observation> jars, Random random) {
        List<Observation> result = new ArrayList<>();
        jars.forEach(
                jar -> result.add(Observation.of(jar.individuals(), 17.3 * jar.samplingUnits())));
        Collections.shuffle(result, random);
        return result;
    }

    /** With very many individuals the distribution is normal and known. */
    @Test
    void meetsTheNormalDistributionWhereCountsAreLarge() {
        List<Observation> jars = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            jars.add(Observation.of(1000 + (i % 2 == 0 ? 316 : -316), 1));
        }
        double[] quantiles = quantiles(EfficacyTrial.of(jars, jars, jars, jars));

        double k = CommonKFit.of(List.of(CountData.of(jars))).k().orElseThrow();
        double deviation = Math.sqrt(4 * (0.001 + 1 / k) / 400);
        assertThat(quantiles[2]).isCloseTo(0, within(1e-9));
        assertThat(quantiles[3]).isCloseTo(1.95996 * deviation, within(0.01 * deviation));
    }
}
