package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.SamplesThatWouldTell.TellingLimits;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SamplesThatWouldTellTest {

    private static final String JARS = "0/10x5 3/10 1/10x2 12/10 2/10 5/10 0/10";
    private static final TellingLimits LIMITS = TellingLimits.standard();

    private static DensityEstimator line(double actionThreshold) {
        return DensityEstimator.standard().withActionThreshold(actionThreshold);
    }

    @ParameterizedTest(name = "action threshold {0}")
    @ValueSource(doubles = {0.1, 0.12, 0.6, 0.8})
    void samplesLikeThoseSoFarWrittenOutDoTell(double actionThreshold) {
        List<Observation> jars = Samples.list(JARS);
        SamplesThatWouldTell tell = SamplesThatWouldTell.of(line(actionThreshold), jars, LIMITS);
        int further = tell.furtherSamples().orElseThrow();

        assertThat(further).isPositive();
        int whole = (int) Math.ceil(1 + further / 12.0);
        String enough = (JARS + " ").repeat(whole).trim();
        assertThat(tells(actionThreshold, Samples.list(enough))).isTrue();
        int fewer = (int) Math.floor(1 + (further - 1) / 12.0);
        String tooFew = (JARS + " ").repeat(fewer).trim();
        assertThat(tells(actionThreshold, Samples.list(tooFew))).isFalse();
    }

    private static boolean tells(double actionThreshold, List<Observation> jars) {
        return LIMITS.tells(
                line(actionThreshold).estimate(jars).probabilityAboveThreshold().orElseThrow());
    }

    @Test
    void isNoneWhereTheSamplesTellAlready() {
        SamplesThatWouldTell tell = SamplesThatWouldTell.of(line(50), Samples.list(JARS), LIMITS);

        assertThat(tell.furtherSamples()).hasValue(0);
    }

    @Test
    void isEmptyWithAReasonWhereTheEstimateIsOnTheLine() {
        SamplesThatWouldTell tell = SamplesThatWouldTell.of(line(0.2), Samples.list(JARS), LIMITS);

        assertThat(tell.furtherSamples()).isEmpty();
        assertThat(tell.reason()).contains("200").contains("too near");
    }

    @Test
    void countsEmptyJarsToo() {
        DensityEstimator known = line(0.02).withGivenK(0.5);

        int further =
                SamplesThatWouldTell.of(known, Samples.list("0/10x8"), LIMITS)
                        .furtherSamples()
                        .orElseThrow();

        assertThat(known.estimate(Samples.list("0/10x" + (8 + further))).upper().orElseThrow())
                .isLessThanOrEqualTo(0.02);
        assertThat(known.estimate(Samples.list("0/10x" + (7 + further))).upper().orElseThrow())
                .isGreaterThan(0.02);
    }

    @Test
    void takesTheMedianKForALoneSampleAndSaysSo() {
        SamplesThatWouldTell tell =
                SamplesThatWouldTell.of(line(0.05), Samples.list("4/10"), LIMITS);

        assertThat(tell.furtherSamples().orElseThrow()).isPositive();
        assertThat(tell.reason()).contains("k is 0.500");
    }

    @Test
    void needsAnActionThreshold() {
        assertThatThrownBy(
                        () ->
                                SamplesThatWouldTell.of(
                                        DensityEstimator.standard(), Samples.list(JARS), LIMITS))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("actionThreshold");
    }
}
