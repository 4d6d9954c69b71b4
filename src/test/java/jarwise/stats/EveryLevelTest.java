package jarwise.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwise.stats.agreement.AgreementScale;
import jarwise.stats.agreement.Concordance;
import jarwise.stats.agreement.CountPair;
import jarwise.stats.agreement.LimitsOfAgreement;
import jarwise.stats.calibration.MethodRatio;
import jarwise.stats.calibration.PairedCount;
import jarwise.stats.count.FoundShare;
import jarwise.stats.count.Observation;
import jarwise.stats.count.PoissonLimits;
import jarwise.stats.count.ProportionPositive;
import jarwise.stats.detect.ClumpedDetection;
import jarwise.stats.detect.LargeLot;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyInterval;
import jarwise.stats.efficacy.EfficacyLimits;
import jarwise.stats.efficacy.EfficacyTrial;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.estimate.IntervalMethod;
import jarwise.stats.filter.PartialReading;
import jarwise.stats.growth.GrowthTrend;
import jarwise.stats.growth.TimedCount;
import jarwise.stats.removal.ExtractionEfficiency;
import jarwise.stats.removal.RemovalCatches;
import jarwise.stats.removal.RemovalMethod;
import jarwise.stats.strata.StratifiedDensity;
import jarwise.stats.strata.Stratum;
import jarwise.stats.subsample.AliquotTotal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever has a confidence level takes every number between 0 and 1. */
@Tag("slow")
class EveryLevelTest {

    private static final double[] RISING = {
        Double.MIN_VALUE,
        1e-300,
        1e-9,
        0.5,
        0.95,
        0.999999,
        0.9999999,
        1 - 1e-9,
        1 - 1e-12,
        1 - 4 * Math.ulp(0.5),
        1 - 2 * Math.ulp(0.5),
        1 - Math.ulp(0.5)
    };

    /** No upper limit is beyond all. */
    private record Limits(double lower, double upper) {

        static Limits of(OptionalDouble lower, OptionalDouble upper) {
            return new Limits(
                    lower.orElse(Double.NEGATIVE_INFINITY), upper.orElse(Double.POSITIVE_INFINITY));
        }
    }

    static Stream<Arguments> limits() {
        List<CountPair> pairs =
                List.of(new CountPair(3, 4), new CountPair(10, 7), new CountPair(25, 28));
        RemovalCatches catches = RemovalCatches.of(60, 25, 11);
        Stream<Arguments> plain =
                Stream.of(
                        of("Poisson", c -> limits(PoissonLimits.of(7, c))),
                        of("share positive", c -> limits(ProportionPositive.of(3, 12, c))),
                        of("share found", c -> limits(FoundShare.of(18, 24, c))),
                        of("aliquot", c -> limits(AliquotTotal.of(40, new long[] {3, 5, 0}, c))),
                        of("agreement", c -> limits(pairs, c)),
                        of("concordance", c -> concordance(pairs, c)),
                        of("efficiency", c -> limits(catches, c)),
                        of("partial", c -> limits(PartialReading.of(7, 10, 40), c)),
                        of(
                                "partial, clumped",
                                c ->
                                        limits(
                                                PartialReading.ofCells(List.of(0L, 9L, 1L, 30L), 9),
                                                c)),
                        of("growth", EveryLevelTest::growth),
                        of("method ratio", EveryLevelTest::ratio),
                        of("crop", EveryLevelTest::crop),
                        of("samples to detect", EveryLevelTest::samples));
        Stream<Arguments> removals =
                Stream.of(RemovalMethod.ML, RemovalMethod.ZIPPIN, RemovalMethod.CARLE_STRUB)
                        .map(method -> of("removal " + method, c -> limits(method, catches, c)));
        Stream<Arguments> densities =
                Stream.of(IntervalMethod.values())
                        .map(method -> of("density " + method, c -> density(method, c)));
        Stream<Arguments> efficacies =
                Stream.of(EfficacyInterval.values())
                        .map(interval -> of("efficacy " + interval, c -> efficacy(interval, c)));
        return Stream.of(plain, removals, densities, efficacies).flatMap(s -> s);
    }

    private static Arguments of(String name, DoubleFunction<Limits> limits) {
        return arguments(name, limits);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limits")
    void limitsOnlyMoveApartAsTheLevelRisesUpToTheLastNumberBelowOne(
            String name, DoubleFunction<Limits> limits) {
        Limits before = limits.apply(RISING[0]);
        assertThat(before.lower()).as(name).isLessThanOrEqualTo(before.upper());
        for (double level : RISING) {
            Limits now = limits.apply(level);
            assertThat(now.lower())
                    .as("lower at %s", level)
                    .isLessThanOrEqualTo(before.lower() * (1 + rounding(before.lower())));
            assertThat(now.upper())
                    .as("upper at %s", level)
                    .isGreaterThanOrEqualTo(before.upper() * (1 - rounding(before.upper())));
            before = now;
        }
        Limits usual = limits.apply(0.95);
        assertThat(before.upper() - before.lower())
                .as(name)
                .isGreaterThan(usual.upper() - usual.lower());
    }

    private static double rounding(double limit) {
        return Math.copySign(1e-9, limit);
    }

    private static Limits limits(PoissonLimits p) {
        return new Limits(p.lower(), p.upper());
    }

    private static Limits limits(ProportionPositive p) {
        return new Limits(p.lower(), p.upper());
    }

    private static Limits limits(FoundShare p) {
        return new Limits(p.lower(), p.upper());
    }

    private static Limits limits(AliquotTotal total) {
        return new Limits(total.limits().lower(), total.limits().upper());
    }

    private static Limits limits(List<CountPair> pairs, double level) {
        LimitsOfAgreement of = LimitsOfAgreement.of(pairs, AgreementScale.SQRT, level);
        return new Limits(of.bias() - of.biasReach(), of.bias() + of.biasReach());
    }

    private static Limits concordance(List<CountPair> pairs, double level) {
        Concordance of = Concordance.of(pairs, AgreementScale.SQRT, level).orElseThrow();
        return Limits.of(of.lower(), of.upper());
    }

    private static Limits limits(RemovalCatches catches, double level) {
        ExtractionEfficiency of = ExtractionEfficiency.of(18, 24, List.of(catches), level);
        return new Limits(of.lower(), of.upper());
    }

    private static Limits limits(RemovalMethod method, RemovalCatches catches, double level) {
        return Limits.of(
                OptionalDouble.of(method.estimate(catches, level).lower()),
                method.estimate(catches, level).upper());
    }

    private static Limits limits(PartialReading reading, double level) {
        return new Limits(reading.lower(level), reading.upper(level));
    }

    private static List<Observation> jars(long... counts) {
        return LongStream.of(counts).mapToObj(count -> Observation.of(count, 10)).toList();
    }

    private static Limits growth(double level) {
        List<TimedCount> samples = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            int day = i / 3;
            samples.add(new TimedCount(Observation.of(3 + 5 * day + i % 3, 10), day));
        }
        return Limits.of(
                GrowthTrend.of(samples, level).rate().lower(),
                GrowthTrend.of(samples, level).rate().upper());
    }

    private static Limits ratio(double level) {
        List<PairedCount> samples = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            samples.add(new PairedCount("a", true, Observation.of(3 + i, 10)));
            samples.add(new PairedCount("a", false, Observation.of(9 + 3 * i % 7, 10)));
        }
        MethodRatio of = MethodRatio.of(samples, level);
        return Limits.of(of.lower(), of.upper());
    }

    private static Limits crop(double level) {
        StratifiedDensity of =
                StratifiedDensity.of(
                        DensityEstimator.standard().withGivenK(0.8).withConfidenceLevel(level),
                        List.of(
                                new Stratum("a", 4000, jars(3, 0, 7, 1)),
                                new Stratum("b", 2000, jars(0, 0, 0, 0))));
        return Limits.of(OptionalDouble.of(of.interval().lower()), of.interval().upper());
    }

    private static Limits samples(double level) {
        DetectionShare wash = DetectionShare.measured(18, 24);
        ClumpedDetection clumped =
                new ClumpedDetection(0.1, 10, 0.8, new Detection(wash, DetectionShare.known(1)));
        LargeLot lot = new LargeLot(0.01, wash, LargeLot.Form.BINOMIAL);
        double exact = clumped.samplesExact(level).orElseThrow();
        double whole = clumped.sampleSize(level).orElseThrow();
        if (level > 1e-9) {
            assertThat(whole).as("samples at %s", level).isBetween(exact - 1e-6, exact + 1 + 1e-6);
        }
        return new Limits(-lot.sampleSize(level).orElseThrow(), exact);
    }

    private static Limits density(IntervalMethod method, double level) {
        DensityEstimate of =
                DensityEstimator.standard()
                        .withMethod(method)
                        .withConfidenceLevel(level)
                        .estimate(jars(3, 0, 7, 1, 12, 0, 2, 5));
        return Limits.of(OptionalDouble.of(of.lower()), of.upper());
    }

    private static Limits efficacy(EfficacyInterval interval, double level) {
        EfficacyLimits of =
                EfficacyEstimator.standard()
                        .withInterval(interval)
                        .withConfidenceLevel(level)
                        .limits(
                                EfficacyTrial.of(
                                        jars(30, 41, 25, 36),
                                        jars(2, 1, 4, 0),
                                        jars(27, 35, 31, 22),
                                        jars(33, 28, 45, 30)));
        return Limits.of(of.lower(), of.upper());
    }
}
