package jarwise.stats.detect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.numeric.SeededRandom;
import jarwise.stats.detect.LargeLot.Form;
import jarwise.stats.estimate.DetectionShare;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LotPropertyTest {

    private static final DetectionShare ALL = DetectionShare.known(1);

    private static DetectionShare efficacy(SeededRandom random) {
        int known = 1 + random.below(30);
        return switch (random.below(3)) {
            case 0 -> ALL;
            case 1 -> DetectionShare.known(0.02 + 0.98 * random.uniform());
            default -> DetectionShare.measured(random.below(known + 1), known);
        };
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void oneUnitLessWouldNotDo(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double level = 0.01 + 0.98 * random.uniform();
        long lotSize = 1L + random.below(3000);
        double proportion = 0.001 + 0.9 * random.uniform();
        DetectionShare efficacy = efficacy(random);
        for (DetectionCurve curve :
                List.of(
                        new FiniteLot(lotSize, 1 + random.below((int) lotSize), efficacy),
                        new LargeLot(proportion, efficacy, Form.BINOMIAL),
                        new LargeLot(proportion, efficacy, Form.POISSON),
                        new CorrelatedLot(proportion, 0.001 + 0.1 * random.uniform(), efficacy))) {
            OptionalLong size = curve.sampleSize(level);
            long at = size.orElse(curve.mostSamples());

            assertThat(curve.probability(at) >= level - 1e-12).isEqualTo(size.isPresent());
            assertThat(curve.probability(at - 1)).isLessThan(level - 1e-12);
        }
    }

    /** The sum written out, with logarithms of factorials. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void missesWhatThePlainSumSays(long seed) {
        SeededRandom random = new SeededRandom(seed);
        int lotSize = 2 + random.below(400);
        int infested = 1 + random.below(lotSize);
        int sample = 1 + random.below(lotSize);
        double share = 0.01 + 0.98 * random.uniform();
        double sum = 0;
        for (int j = Math.max(0, sample - lotSize + infested);
                j <= Math.min(infested, sample);
                j++) {
            sum +=
                    Math.exp(
                            logChoose(infested, j)
                                    + logChoose(lotSize - infested, sample - j)
                                    - logChoose(lotSize, sample)
                                    + j * Math.log(1 - share));
        }
        FiniteLot lot = new FiniteLot(lotSize, infested, DetectionShare.known(share));

        assertThat(lot.missed(sample)).isCloseTo(sum, within(1e-11));
    }

    private static double logChoose(int n, int k) {
        double log = 0;
        for (int i = 1; i <= k; i++) {
            log += Math.log((n - k + i) / (double) i);
        }
        return log;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void finiteLotsAskForMoreOfBiggerLotsAndForNoMoreThanTheBinomial(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double level = 0.5 + 0.49 * random.uniform();
        int infested = 1 + random.below(5);
        int lotSize = 20 * infested;
        DetectionShare efficacy = DetectionShare.known(0.9 + 0.1 * random.uniform());
        long before = 0;
        for (int times : new int[] {1, 10, 100, 10_000, 1_000_000}) {
            FiniteLot lot =
                    new FiniteLot((long) lotSize * times, (long) infested * times, efficacy);
            OptionalLong size = lot.sampleSize(level);
            if (size.isPresent()) {
                assertThat(size.getAsLong()).isGreaterThanOrEqualTo(before);
                before = size.getAsLong();
            }
        }
        long binomial = new LargeLot(0.05, efficacy, Form.BINOMIAL).sampleSize(level).orElseThrow();

        assertThat(before).isBetween(binomial - 1, binomial);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void aBetterInspectionAndMoreInfestedUnitsNeedNoMore(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double share = 0.1 + 0.8 * random.uniform();
        double proportion = 0.01 + 0.5 * random.uniform();
        double rho = 0.01 + 0.2 * random.uniform();
        double level = 0.3 + 0.5 * random.uniform();
        int lotSize = 50 + random.below(1000);
        long infested = Math.max(1, (long) (lotSize * proportion));
        List<DetectionCurve> harder =
                List.of(
                        new FiniteLot(lotSize, infested, DetectionShare.known(share)),
                        new LargeLot(proportion, DetectionShare.known(share), Form.BINOMIAL),
                        new CorrelatedLot(proportion, rho, DetectionShare.known(share)));
        DetectionShare better = DetectionShare.known(share * 1.1);
        List<DetectionCurve> seen =
                List.of(
                        new FiniteLot(lotSize, infested, better),
                        new LargeLot(proportion, better, Form.BINOMIAL),
                        new CorrelatedLot(proportion, rho, better));
        DetectionShare same = DetectionShare.known(share);
        List<DetectionCurve> more =
                List.of(
                        new FiniteLot(lotSize, infested + 1, same),
                        new LargeLot(1.1 * proportion, same, Form.BINOMIAL),
                        new CorrelatedLot(1.1 * proportion, rho, same));
        for (int i = 0; i < harder.size(); i++) {
            long size = harder.get(i).sampleSize(level).orElse(Long.MAX_VALUE);
            assertThat(seen.get(i).sampleSize(level).orElse(Long.MAX_VALUE))
                    .isLessThanOrEqualTo(size);
            assertThat(more.get(i).sampleSize(level).orElse(Long.MAX_VALUE))
                    .isLessThanOrEqualTo(size);
            assertThat(harder.get(i).sampleSize(0.5 * level).orElse(Long.MAX_VALUE))
                    .isLessThanOrEqualTo(size);
        }
    }

    @Test
    void withoutCorrelationTheBetaBinomialIsBinomial() {
        for (double share : new double[] {1, 0.8, 0.1}) {
            DetectionShare efficacy = DetectionShare.known(share);
            for (double proportion : new double[] {0.05, 0.02, 0.01}) {
                LargeLot lot = new LargeLot(proportion, efficacy, Form.BINOMIAL);
                long size = lot.sampleSize(0.95).orElseThrow();
                CorrelatedLot together = new CorrelatedLot(proportion, 1e-6, efficacy);

                assertThat(together.missed(size)).isCloseTo(lot.missed(size), within(2e-4));
                assertThat(together.sampleSize(0.95).orElseThrow()).isBetween(size, size + 2);
            }
        }
    }

    /** Efficacy thins: the average of (1 − p E)^n over the Beta distribution of p. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void efficacyThinsCorrelatedLots(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double share = 0.05 + 0.9 * random.uniform();
        double proportion = 0.05 + 0.5 * random.uniform();
        double rho = 0.02 + 0.2 * random.uniform();
        int sample = 1 + random.below(200);
        CorrelatedLot lot = new CorrelatedLot(proportion, rho, DetectionShare.known(share));
        double a = proportion * (1 - rho) / rho;
        double b = (1 - proportion) * (1 - rho) / rho;
        double expected =
                jarwise.numeric.BetaNodes.of(a, b, 0.3, 1)
                        .average(logP -> Math.pow(1 - share * Math.exp(logP), sample));

        assertThat(lot.missed(sample)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void neitherHangsNorOverflowsAtTheEnds() {
        long most = FiniteLot.LARGEST_LOT;
        for (DetectionShare efficacy :
                List.of(ALL, DetectionShare.known(1e-6), DetectionShare.measured(0, 5))) {
            for (long infested : new long[] {1, 1000, 30_000, most / 2, most}) {
                FiniteLot lot = new FiniteLot(most, infested, efficacy);
                for (double level : new double[] {1e-9, 0.95, 1 - 1e-12}) {
                    OptionalLong size = lot.sampleSize(level);
                    assertThat(size.isPresent()).isEqualTo(lot.probability(most) >= level - 1e-12);
                }
            }
        }
        assertThat(new LargeLot(1e-12, ALL, Form.POISSON).sampleSize(1 - 1e-12)).isPresent();
        assertThat(new CorrelatedLot(1e-9, 0.9, DetectionShare.known(0.5)).sampleSize(0.95))
                .isEmpty();
        assertThat(new CorrelatedLot(1e-9, 0.9, DetectionShare.measured(3, 9)).sampleSize(0.95))
                .isEmpty();
    }

    @Test
    void curvesStandSideBySide() {
        Map<String, DetectionCurve> curves = new LinkedHashMap<>();
        curves.put("wash", new LargeLot(0.5, ALL, Form.BINOMIAL));
        curves.put("tap", new LargeLot(0.5, DetectionShare.known(0.5), Form.BINOMIAL));
        DetectionCurves methods = new DetectionCurves(curves);

        List<DetectionCurves.Row> rows = methods.at(LongStream.of(1, 2));

        assertThat(rows.get(1).sampleSize()).isEqualTo(2);
        assertThat(rows.get(1).probabilities().get("wash")).isCloseTo(0.75, within(1e-12));
        assertThat(rows.get(1).probabilities().get("tap")).isCloseTo(0.4375, within(1e-12));
        assertThat(methods.sampleSizes(0.75)).containsEntry("wash", OptionalLong.of(2));
        assertThat(methods.sampleSizes(0.75)).containsEntry("tap", OptionalLong.of(5));
    }
}
