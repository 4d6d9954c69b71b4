package jarwise.bench;

import jarwise.stats.sequential.CountedSamples;
import jarwise.stats.sequential.PresenceAbsence;
import jarwise.stats.sequential.SampleModel;
import jarwise.stats.sequential.SequentialOutcome;
import jarwise.stats.sequential.SequentialPlan;
import jarwise.stats.sequential.WaldDesign;
import java.lang.management.ManagementFactory;
import java.util.Arrays;

/**
 * Time for the exact outcome of a sequential plan at 41 densities, warm, in microseconds of
 * processor time; target under 10,000 for up to 60 samples.
 */
public final class SequentialBench {

    private static final int ROUNDS = 25;
    private static final int REPEATS = 10;

    private SequentialBench() {}

    /** Prints the median of 25 rounds of 10 curves for each plan. */
    public static void main(String[] arguments) {
        print("NB 1/2, k 0.8, 60 samples", plan(new CountedSamples(0.8), 1, 2, 1));
        print("NB 2/5, k 0.6, 60 samples", plan(new CountedSamples(0.6), 2, 5, 1));
        print("NB 0.2/0.5 per unit, 10 units", plan(new CountedSamples(0.6), 0.2, 0.5, 10));
        print("NB 1/2 per unit, 10 units", plan(new CountedSamples(0.8), 1, 2, 10));
        print("Poisson 1/2, 60 samples", plan(CountedSamples.POISSON, 1, 2, 1));
        print("presence 0.1/0.25, 60 samples", plan(new PresenceAbsence(), 0.1, 0.25, 1));
    }

    private static SequentialPlan plan(SampleModel model, double low, double high, double units) {
        return new SequentialPlan(new WaldDesign(model, low, high, 0.1, 0.1, units), 1, 60);
    }

    /** Time of this thread alone, so that other work on the machine does not count. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void print(String name, SequentialPlan plan) {
        double[] microseconds = new double[ROUNDS];
        double checksum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = processorTime();
            for (int i = 0; i < REPEATS; i++) {
                for (double density : plan.usualDensities()) {
                    SequentialOutcome outcome = plan.outcome(density);
                    checksum += outcome.averageSampleNumber() + outcome.probabilityBelow();
                    checksum += outcome.sampleNumberQuantile(0.95);
                }
            }
            microseconds[round] = (processorTime() - start) / 1000.0 / REPEATS;
        }
        Arrays.sort(microseconds);
        System.out.printf(
                "%-32s %7.0f µs   (sum %.6f)%n",
                name, microseconds[ROUNDS / 2], checksum / (ROUNDS * REPEATS));
    }
}
