package jarwise.bench;

import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Time for the estimate of one group of 12 jars, warm, in microseconds of processor time; target
 * under 1,000.
 */
public final class IntervalBench {

    private static final int[] COUNTS = {0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0};
    private static final int[] UNITS = {8, 10, 12, 6, 14, 9, 10, 11, 7, 10, 13, 8};
    private static final int ROUNDS = 25;
    private static final int REPEATS = 200;

    private IntervalBench() {}

    /** Prints the median of 25 rounds of 200 estimates for each case. */
    public static void main(String[] arguments) {
        DensityEstimator plain = DensityEstimator.standard().withActionThreshold(0.3);
        Detection measured =
                new Detection(DetectionShare.measured(18, 24), DetectionShare.known(1));
        print("12 jars of 10 units", plain, jars(true));
        print("12 jars of unequal units", plain, jars(false));
        DensityEstimator one = plain.withDetection(measured);
        DensityEstimator two =
                plain.withDetection(
                        new Detection(
                                DetectionShare.measured(18, 24), DetectionShare.measured(46, 50)));
        print("12 jars of 10 units, efficiency 18/24", one, jars(true));
        print("the same, reader 46/50", two, jars(true));
        print("12 jars of unequal units, both measured", two, jars(false));
        print("12 empty jars, nothing measured", plain, empty());
        print("12 empty jars, efficiency 18/24", one, empty());
        print("12 empty jars, reader 46/50", two, empty());
        print("12 jars of 10 units, k given", plain.withGivenK(0.8), jars(true));
    }

    /** Time of this thread alone, so that other work on the machine does not count. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static List<Observation> jars(boolean equal) {
        List<Observation> jars = new ArrayList<>();
        for (int i = 0; i < COUNTS.length; i++) {
            jars.add(Observation.of(COUNTS[i], equal ? 10 : UNITS[i]));
        }
        return jars;
    }

    private static List<Observation> empty() {
        return Collections.nCopies(COUNTS.length, Observation.of(0, 10));
    }

    private static void print(String name, DensityEstimator estimator, List<Observation> jars) {
        double[] microseconds = new double[ROUNDS];
        double checksum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = processorTime();
            for (int i = 0; i < REPEATS; i++) {
                checksum += estimator.estimate(jars).upper().orElse(0);
            }
            microseconds[round] = (processorTime() - start) / 1000.0 / REPEATS;
        }
        Arrays.sort(microseconds);
        System.out.printf(
                "%-40s %7.0f µs   (upper %.6f)%n",
                name, microseconds[ROUNDS / 2], checksum / (ROUNDS * REPEATS));
    }
}
