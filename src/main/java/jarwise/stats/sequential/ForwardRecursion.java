package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import java.util.Arrays;
import java.util.function.IntFunction;

/**
 * Chances of every cumulative count between the stop lines, sample by sample.
 *
 * <p>The count never falls, so a count at or over the next upper line that holds is lost to
 * "above", and its chance is known from the upper tail of one sample: nothing is cut off. Before
 * the least number of samples no line holds, and the upper line at that number bounds the counts.
 */
final class ForwardRecursion {

    /** Multiplications that one outcome may take; a quarter of a second. */
    private static final double MOST_WORK = 5e8;

    private final StopLines lines;
    private final int already;
    private final double[] stoppedBelow;
    private final double[] stoppedAbove;

    /** Chances of the counts from {@code first} on; those further up are 0. */
    private double[] chances;

    private double[] next;
    private long first;
    private int held = 1;

    private ForwardRecursion(StopLines lines, int already, long count) {
        this.lines = lines;
        this.already = already;
        int samples = lines.maxSamples() - already + 1;
        stoppedBelow = new double[samples];
        stoppedAbove = new double[samples];
        first = count;
        int width = width(lines, already, count);
        chances = new double[width];
        next = new double[width];
        chances[0] = 1;
    }

    /**
     * The outcome from a state on.
     *
     * @param lines the lines
     * @param already samples counted so far, 0 or more, at most the lines' largest number
     * @param count individuals in them
     * @param samples chances of what a sample adds, by the sample's number
     */
    static SequentialOutcome outcome(
            StopLines lines, int already, long count, IntFunction<SampleChances> samples) {
        if (count >= lines.stopAbove(Math.max(already, lines.minSamples()))) {
            return settled(lines, already, 1);
        }
        if (already >= lines.minSamples() && count <= lines.lower(already)) {
            return settled(lines, already, 0);
        }
        ForwardRecursion recursion = new ForwardRecursion(lines, already, count);
        for (int n = already + 1; n <= lines.maxSamples() && recursion.held > 0; n++) {
            recursion.add(n, samples.apply(n));
        }
        return recursion.outcome();
    }

    private static SequentialOutcome settled(StopLines lines, int already, double above) {
        int when = Math.max(already, lines.minSamples());
        return new SequentialOutcome(when, new double[] {1 - above}, new double[] {above}, 0);
    }

    /** The most counts that are ever held at once. */
    static int width(StopLines lines, int already, long count) {
        double widest = 1;
        double work = 0;
        for (int n = already + 1; n <= lines.maxSamples(); n++) {
            boolean open = n <= lines.minSamples();
            long above = (long) Math.floor(lines.lower(n - 1)) + 1;
            long from = open ? count : Math.max(count, above);
            double width = lines.stopAbove(Math.max(n, lines.minSamples())) - from;
            widest = Math.max(widest, width);
            work += width * width / 2;
        }
        if (work <= MOST_WORK) {
            return (int) widest;
        }
        throw new InvalidInput(
                ("the stop lines lie %.0f individuals apart for %d samples, more than can be worked"
                     + " out exactly. Maybe choose densities further apart, fewer sampling units in"
                     + " a sample, or a smaller largest number of samples; or k is too small.")
                        .formatted(widest, lines.maxSamples()));
    }

    private void add(int sampleSize, SampleChances sample) {
        int last = Math.max(sampleSize, lines.minSamples());
        int width = (int) (lines.stopAbove(last) - first);
        Arrays.fill(next, 0, width, 0);
        double above = 0;
        for (int i = 0; i < held; i++) {
            if (chances[i] > 0) {
                sample.addTo(next, i, width, chances[i]);
                above += chances[i] * sample.atLeast(width - i);
            }
        }
        stoppedAbove[last - already] += above;
        double[] spare = chances;
        chances = next;
        next = spare;
        held = width;
        if (sampleSize >= lines.minSamples()) {
            stopBelow(sampleSize);
        }
    }

    private void stopBelow(int sampleSize) {
        long under = (long) Math.floor(lines.lower(sampleSize)) + 1 - first;
        if (under <= 0) {
            return;
        }
        int gone = (int) Math.min(under, held);
        double below = 0;
        for (int i = 0; i < gone; i++) {
            below += chances[i];
        }
        stoppedBelow[sampleSize - already] = below;
        held -= gone;
        System.arraycopy(chances, gone, chances, 0, held);
        first += gone;
    }

    private SequentialOutcome outcome() {
        double undecided = 0;
        for (int i = 0; i < held; i++) {
            undecided += chances[i];
        }
        return new SequentialOutcome(already, stoppedBelow, stoppedAbove, undecided);
    }
}
