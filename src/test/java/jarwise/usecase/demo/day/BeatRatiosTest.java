package jarwise.usecase.demo.day;

import static jarwise.sample.SamplingMethod.WASH;
import static jarwise.usecase.demo.Stage.ADULT;
import static jarwise.usecase.demo.Stage.LARVA1;
import static jarwise.usecase.demo.Stage.LARVA2;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.Streams;
import jarwise.usecase.demo.WorkWeek;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Beats 3 and 5: what a treatment did on P1-B3 against what happened on P1-B4 meanwhile.
 *
 * <p>The limits follow from the model the jars are drawn by. In one jar of m growing points all
 * stages of a pest share a factor G, gamma of shape 4 and mean 1; given G, a stage of mean λ at one
 * point is negative binomial with mean G λ and its own k; of these a share p comes to the eye. With
 * E = m Σ pλ and w = pλ / Σ pλ the relative variance of the jar's total is
 *
 * <pre>1/E + (5/4)/m · Σ w²/k + 1/4,</pre>
 *
 * since the mean of G² is 5/4. Divided by the number of jars and added up over the four groups it
 * is, to first order, the variance of the logarithm of the ratio.
 */
class BeatRatiosTest {

    private static final int MANY = 2000;

    static List<Arguments> treatments() {
        return List.of(Arguments.of(3, 4, .8114, .1308), Arguments.of(5, 6, .7368, .8429));
    }

    /** Beat 3: 1 − (.06/.25)/(.28/.22) and 1 − (1.02/.95)/(1.05/.85); beat 5 alike. */
    @ParameterizedTest(name = "beat {0}: from round {1} adults −{2}, larvae −{3}")
    @MethodSource("treatments")
    void theTrueMeansFallAsTheStorySays(int beat, int round, double adults, double larvae) {
        assertThat(1 - trueRatio(round, ADULT)).as("adults").isCloseTo(adults, within(5e-5));
        assertThat(1 - trueRatio(round, LARVA1, LARVA2))
                .as("larvae of beat " + beat)
                .isCloseTo(larvae, within(5e-5));
    }

    /** Three standard errors each way: with adults this is wide, as eight jars are. */
    @ParameterizedTest(name = "beat {0}")
    @MethodSource("treatments")
    void theCountsFallAsFarAsEightJarsCanTell(int beat, int round, double adults, double larvae) {
        for (Stage[] stages : new Stage[][] {{ADULT}, {LARVA1, LARVA2}}) {
            double found = ratio(round, bench -> countsPerJar(bench, stages));
            double error = error(round, 8, stage -> shareSeen(stage), stages);
            assertThat(Math.log(found))
                    .as("beat %d, %s, standard error %.2f", beat, Arrays.toString(stages), error)
                    .isCloseTo(Math.log(trueRatio(round, stages)), within(3 * error));
        }
    }

    /** Two thousand jars of each bench and round leave limits that a wrong mean would break. */
    @ParameterizedTest(name = "beat {0}")
    @MethodSource("treatments")
    void whatLiesOnManyFiltersFallsAsTheTrueMeansDo(
            int beat, int round, double adults, double larvae) {
        for (Stage[] stages : new Stage[][] {{ADULT}, {LARVA1, LARVA2}}) {
            double found = ratio(round, bench -> onManyFilters(bench, stages));
            double error =
                    error(round, MANY, stage -> stage.observed().washed(Fluid.SOAP, false), stages);
            assertThat(Math.log(found))
                    .as("beat %d, %s, standard error %.3f", beat, Arrays.toString(stages), error)
                    .isCloseTo(Math.log(washedRatio(round, stages)), within(4 * error));
        }
    }

    /**
     * Clumping of a jar of ten points: 1/k of the jar is 1/4 + (5/4)/(10 k), whatever share is
     * washed off. Moments of 4000 jars know k to about 6 %; three times that is allowed.
     */
    @Test
    void jarsOfTenPointsClumpAsTheirPointsAndTheirBenchDo() {
        for (Stage stage : List.of(ADULT, LARVA1, LARVA2)) {
            double[] totals = filters(new At("P1-B3", 6), 2 * MANY, stage);
            double mean = Arrays.stream(totals).average().orElseThrow();
            double variance =
                    Arrays.stream(totals).map(t -> (t - mean) * (t - mean)).sum()
                            / (totals.length - 1);
            double k = 1 / (1 / 4.0 + 1.25 / (10 * stage.k()));
            assertThat(mean * mean / (variance - mean))
                    .as("k of a jar, " + stage)
                    .isCloseTo(k, withinPercentage(18));
        }
    }

    private record At(String bench, int round) {}

    /** After over before on the treated bench, over the same on the check. */
    private static double ratio(int round, ToDoubleFunction<At> density) {
        return density.applyAsDouble(new At("P1-B3", round + 1))
                / density.applyAsDouble(new At("P1-B3", round))
                / density.applyAsDouble(new At("P1-B4", round + 1))
                * density.applyAsDouble(new At("P1-B4", round));
    }

    private static double trueRatio(int round, Stage... stages) {
        return ratio(round, at -> weighted(at, stage -> 1, stages));
    }

    private static double washedRatio(int round, Stage... stages) {
        return ratio(
                round, at -> weighted(at, s -> s.observed().washed(Fluid.SOAP, false), stages));
    }

    private static double weighted(At at, ToDoubleFunction<Stage> share, Stage... stages) {
        return Arrays.stream(stages)
                .mapToDouble(s -> share.applyAsDouble(s) * trueMean(at, s))
                .sum();
    }

    private static double trueMean(At at, Stage stage) {
        return Stand.on(at.bench()).density(stage, at.round());
    }

    /** Reader A reads seven filters in ten. */
    private static double shareSeen(Stage stage) {
        double seen =
                .7 * stage.observed().seenBy(Cast.READER_A)
                        + .3 * stage.observed().seenBy(Cast.READER_B);
        return seen * stage.observed().washed(Fluid.SOAP, false);
    }

    private static double error(
            int round, int jars, ToDoubleFunction<Stage> share, Stage... stages) {
        double variance = 0;
        for (String bench : List.of("P1-B3", "P1-B4")) {
            for (int number : new int[] {round, round + 1}) {
                At at = new At(bench, number);
                double all = weighted(at, share, stages);
                double clumped = 0;
                for (Stage stage : stages) {
                    double weight = share.applyAsDouble(stage) * trueMean(at, stage) / all;
                    clumped += weight * weight / stage.k();
                }
                variance += (1 / (10 * all) + 1.25 / 10 * clumped + 1 / 4.0) / jars;
            }
        }
        return Math.sqrt(variance);
    }

    /** Half an individual more, so that a zero has a logarithm; filters that were left are out. */
    private static double countsPerJar(At at, Stage... stages) {
        DemoCounts jars = DemoCounts.ofTheDemo().random(WASH, at.round(), at.bench()).readWhole();
        assertThat(jars.size()).as("whole filters of " + at).isBetween(5, 8);
        return (jars.sum(stages) + .5) / jars.size();
    }

    private static double onManyFilters(At at, Stage... stages) {
        return Arrays.stream(filters(at, MANY, stages)).sum();
    }

    private static double[] filters(At at, int jars, Stage... stages) {
        List<Stage> wanted = List.of(stages);
        return IntStream.rangeClosed(1, jars)
                .mapToObj(seed -> Filter.of(jar(at), new Codes(new Streams(seed))))
                .mapToDouble(
                        filter ->
                                filter.insects().stream()
                                        .filter(insect -> wanted.contains(insect.stage()))
                                        .count())
                .toArray();
    }

    private static Jar jar(At at) {
        return new Jar(
                new SampleCode("000-" + at.bench().replace("-", "")),
                at.round(),
                Stand.on(at.bench()),
                1,
                SampleRole.CROP,
                Purpose.RANDOM,
                new WorkWeek(at.round()).washed(1),
                new WorkWeek(at.round()).washed(1).plusSeconds(1200));
    }
}
