package jarwise.stats.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import jarwise.stats.count.Observation;
import jarwise.stats.count.SimulatedCounts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RegressionPropertyTest {

    private static final double CUT = 3.841458820694124;
    private static final ModelTerms TERMS = new ModelTerms(List.of("g", "x"), Set.of("g"));

    /** Clumped counts of three groups along a covariate, with unequal jars. */
    static List<ModelRow> rows(long seed, int number) {
        SimulatedCounts drawn = new SimulatedCounts(seed);
        double k = Math.exp(drawn.uniform() * 4 - 0.7);
        List<ModelRow> rows = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            double x = drawn.below(9) / 4.0;
            double units = 6 + drawn.below(9);
            double mean = units * Math.exp(0.4 * (i % 3) - 0.5 * x - 0.5);
            long count = drawn.negativeBinomial(mean, k);
            rows.add(row("g" + i % 3, x, units, count, 1));
        }
        return rows;
    }

    private static ModelRow row(String group, double x, double units, long count, double times) {
        return new ModelRow(Map.of("g", group, "x", String.valueOf(x)), units, count, times);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void standsOnTheTopWhereAllSlopesVanish(long seed) {
        ModelFrame frame = TERMS.frame(rows(seed, 30));
        RegressionFit fit = NegativeBinomialRegression.fit(frame);
        double[] at = coefficients(fit);
        double k = fit.k().orElse(Double.POSITIVE_INFINITY);
        LikelihoodPass pass = new LikelihoodPass(frame.design());
        LikelihoodPass.Sums sums = pass.at(at, k);

        assertThat(fit.converged()).isTrue();
        assertThat(sums.slope()).usingComparatorWithPrecision(1e-5).containsOnly(0);
        assertThat(sums.slopeInLogK()).isCloseTo(0, within(1e-5));
        for (int j = 0; j < at.length; j++) {
            double[] aside = at.clone();
            aside[j] += 1e-5;
            LikelihoodPass.Sums there = pass.at(aside, k);
            double slope = (there.logLikelihood() - sums.logLikelihood()) / 1e-5;
            assertThat(slope)
                    .as("finite difference")
                    .isCloseTo(0.5 * (there.slope()[j] + sums.slope()[j]), within(1e-5));
        }
    }

    private static double[] coefficients(RegressionFit fit) {
        return java.util.stream.IntStream.range(0, fit.coefficients().size())
                .mapToDouble(j -> fit.estimate(fit.only(j)).getAsDouble())
                .toArray();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void theOrderOfRowsMakesNoDifferenceAndARowMayBeSplit(long seed) {
        List<ModelRow> rows = rows(seed, 24);
        List<ModelRow> other = new ArrayList<>();
        for (ModelRow row : rows) {
            other.add(half(row));
            other.add(half(row));
        }
        Collections.shuffle(other, new Random(seed));
        RegressionFit one = NegativeBinomialRegression.fit(TERMS.frame(rows));
        RegressionFit two = NegativeBinomialRegression.fit(TERMS.frame(other));

        assertThat(two.logLikelihood()).isCloseTo(one.logLikelihood(), within(1e-9));
        for (int j = 0; j < one.coefficients().size(); j++) {
            assertThat(two.estimate(two.only(j)).getAsDouble())
                    .isCloseTo(one.estimate(one.only(j)).getAsDouble(), within(1e-7));
        }
    }

    private static ModelRow half(ModelRow row) {
        return new ModelRow(row.values(), row.exposure(), row.individuals(), row.frequency() / 2);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void oneGroupIsTheEstimateOfOneGroup(long seed) {
        List<ModelRow> rows = rows(seed, 15);
        ModelFrame.Builder frame = new ModelFrame.Builder(List.of(Coefficient.INTERCEPT));
        List<Observation> jars = new ArrayList<>();
        for (ModelRow row : rows) {
            frame.add(new double[] {1}, row.exposure(), row.individuals(), 1);
            jars.add(new Observation(row.individuals(), row.exposure(), 1));
        }
        RegressionFit fit = NegativeBinomialRegression.fit(frame.build());
        CountFit group = CountFit.of(CountData.of(jars));

        assertThat(fit.logLikelihood()).isCloseTo(group.logLikelihood(), within(1e-8));
        assertThat(Math.exp(fit.estimate(fit.only(0)).getAsDouble()))
                .isCloseTo(group.density(), within(1e-5 * group.density()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void theLikelihoodHasFallenByTheCutAtEachLimit(long seed) {
        RegressionFit fit = NegativeBinomialRegression.fit(TERMS.frame(rows(seed, 30)));
        double[] slope = fit.only(3);
        ProfileLimits limits = fit.limits(slope, CUT);
        double estimate = fit.estimate(slope).getAsDouble();

        assertThat(limits.lower().getAsDouble()).isLessThan(estimate);
        assertThat(limits.upper().getAsDouble()).isGreaterThan(estimate);
        assertThat(fit.deviance(slope, limits.lower().getAsDouble())).isCloseTo(CUT, within(1e-5));
        assertThat(fit.deviance(slope, limits.upper().getAsDouble())).isCloseTo(CUT, within(1e-5));
    }

    @Test
    void isTheSameToTheLastBitOnAnyNumberOfThreads() throws Exception {
        ModelFrame frame = frameOfManyCells();
        double alone = onThreads(1, frame);
        assertThat(onThreads(4, frame)).isEqualTo(alone);
        assertThat(onThreads(3, frame)).isEqualTo(alone);
    }

    private static double onThreads(int threads, ModelFrame frame) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> NegativeBinomialRegression.fit(frame).logLikelihood()).get();
        } finally {
            pool.shutdown();
        }
    }

    private static ModelFrame frameOfManyCells() {
        Random random = new Random(3);
        ModelFrame.Builder frame =
                new ModelFrame.Builder(
                        List.of(
                                Coefficient.INTERCEPT,
                                new Coefficient("x", java.util.Optional.empty())));
        for (int i = 0; i < 120_000; i++) {
            double x = random.nextDouble();
            frame.add(new double[] {1, x}, 1, (long) (random.nextDouble() * 6 * x), 1);
        }
        return frame.build();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void rowsTakenAtOnceAreTheSameAsOneByOne(long seed) {
        List<ModelRow> rows = rows(seed, 24);
        ModelFrame frame = TERMS.frame(rows);
        int p = frame.coefficients().size();
        double[] design = new double[rows.size() * p];
        for (int i = 0; i < rows.size(); i++) {
            String group = rows.get(i).values().get("g");
            design[i * p] = 1;
            design[i * p + 1] = "g1".equals(group) ? 1 : 0;
            design[i * p + 2] = "g2".equals(group) ? 1 : 0;
            design[i * p + 3] = Double.parseDouble(rows.get(i).values().getOrDefault("x", ""));
        }
        ModelFrame atOnce =
                ModelFrame.ofRows(
                        frame.coefficients(),
                        design,
                        rows.stream().mapToDouble(ModelRow::exposure).toArray(),
                        rows.stream().mapToLong(ModelRow::individuals).toArray());

        assertThat(NegativeBinomialRegression.fit(atOnce).logLikelihood())
                .isCloseTo(NegativeBinomialRegression.fit(frame).logLikelihood(), within(1e-9));
        assertThat(atOnce.design().cells()).isEqualTo(frame.design().cells());
    }

    @Test
    void countsThatScatterLessThanPoissonCountsHaveNoK() {
        List<ModelRow> rows = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            rows.add(row("g" + i % 3, i % 4, 1, 4 + i % 2, 1));
        }
        RegressionFit fit = NegativeBinomialRegression.fit(TERMS.frame(rows));

        assertThat(fit.k()).isEmpty();
        assertThat(fit.kStandardError()).isEmpty();
        assertThat(fit.parameters()).isEqualTo(4);
        assertThat(fit.logLikelihood())
                .isEqualTo(NegativeBinomialRegression.poisson(TERMS.frame(rows)).logLikelihood());
    }

    @Test
    void aGroupWithoutAFindDoesTheOthersNoHarm() {
        List<ModelRow> rows = rows(7, 30);
        List<ModelRow> more = new ArrayList<>(rows);
        for (int i = 0; i < 5; i++) {
            more.add(row("a", i, 10, 0, 1));
        }
        RegressionFit without = NegativeBinomialRegression.fit(TERMS.frame(rows));
        RegressionFit with = NegativeBinomialRegression.fit(TERMS.frame(more));

        assertThat(with.logLikelihood()).isCloseTo(without.logLikelihood(), within(1e-7));
        assertThat(with.estimate(with.only(0))).as("its own mean").isEmpty();
        double[] between = {0, -1, 1, 0, 0};
        double[] reference = {0, 1, 0, 0};
        assertThat(with.estimate(between).getAsDouble())
                .isCloseTo(without.estimate(reference).getAsDouble(), within(1e-6));
        assertThat(with.standardError(between).getAsDouble())
                .isCloseTo(without.standardError(reference).getAsDouble(), within(1e-6));
    }

    @Test
    void refusesTermsThatMakeNoModel() {
        assertThatThrownBy(() -> new ModelTerms(List.of(), Set.of()))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ModelTerms(List.of("a", "a"), Set.of()))
                .hasMessageContaining("there twice");
        assertThatThrownBy(() -> new ModelTerms(List.of("a", "a:b"), Set.of()))
                .hasMessageContaining("Maybe: --terms a,b,a:b");
        assertThatThrownBy(
                        () ->
                                new ModelTerms(List.of("x"), Set.of())
                                        .frame(List.of(row("g", 1, 1, 3, 1))))
                .hasMessageContaining("\"1.0\" in every row");
    }
}
