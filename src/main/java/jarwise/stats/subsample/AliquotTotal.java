package jarwise.stats.subsample;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Arrays;
import java.util.function.LongPredicate;
import org.hipparchus.special.Beta;

/**
 * How many are in an extract, if some of its squares were counted?
 *
 * @param counted individuals counted
 * @param fraction squares counted over squares in all, in (0, 1]
 * @param estimate counted / fraction
 * @param designError standard error from the variance between the counted squares
 * @param mixedError standard error if the extract is well mixed
 * @param limits whole totals that the well-mixed extract leaves open
 */
public record AliquotTotal(
        long counted,
        double fraction,
        double estimate,
        double designError,
        double mixedError,
        Limits limits) {

    /**
     * Limits of the total.
     *
     * @param lower smallest whole total T with P(counted or more | T) over the tail
     * @param upper largest whole total T with P(counted or fewer | T) over the tail
     */
    public record Limits(long lower, long upper) {}

    private static final long MOST_COUNTED = 1_000_000_000_000L;

    /**
     * The total from counts of single squares.
     *
     * <pre>
     *   design:     variance = M² (1 − m/M) s² / m
     *   well mixed: variance = counted (1 − f) / f²,   counted | total ~ Binomial(total, f)
     * </pre>
     *
     * <p>m of M squares counted, f = m/M, s² the variance between counted squares (divisor m − 1).
     *
     * <p><b>Assumes</b> squares taken at random; the second form and the limits also that every
     * individual is as likely in one square as in another. Where s² is far above the mean of the
     * squares, only the first form holds.
     *
     * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 2 (from memory). Reference
     * values: {@code reference/subsample/aliquot.csv}.
     *
     * @param squares squares in all M, 1 to 1,000,000
     * @param counts individuals in each counted square, 1 to M of them, 0 or more each
     * @param confidenceLevel two-sided level of the limits, in (0, 1)
     * @return the total
     * @throws InvalidInput if a number is out of range
     */
    public static AliquotTotal of(int squares, long[] counts, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        if (!(squares >= 1 && squares <= 1_000_000)) {
            throw new InvalidInput("squares is %d; it must be 1 to 1000000.".formatted(squares));
        }
        Require.atLeast("counted squares", counts.length, 1);
        Require.atLeast("squares left", (long) squares - counts.length, 0);
        Arrays.stream(counts).forEach(count -> Require.atLeast("count", count, 0));
        double sum = Arrays.stream(counts).asDoubleStream().sum();
        if (!(sum <= MOST_COUNTED)) {
            throw new InvalidInput(
                    "counted is %s; it must be at most %d.".formatted(sum, MOST_COUNTED));
        }
        double f = counts.length / (double) squares;
        double design = squares * (squares - (double) counts.length) * variance(counts, sum);
        return new AliquotTotal(
                (long) sum,
                f,
                sum / f,
                Math.sqrt(design / counts.length),
                Math.sqrt(sum * (1 - f)) / f,
                limits((long) sum, f, 0.5 * (1 - confidenceLevel)));
    }

    private static double variance(long[] counts, double sum) {
        double mean = sum / counts.length;
        double squares = Arrays.stream(counts).mapToDouble(c -> (c - mean) * (c - mean)).sum();
        return counts.length < 2 ? 0 : squares / (counts.length - 1.0);
    }

    private static Limits limits(long counted, double f, double tail) {
        if (f == 1) {
            return new Limits(counted, counted);
        }
        long lower =
                counted == 0 ? 0 : first(counted, total -> asManyOrMore(counted, total, f) > tail);
        long upper = first(counted, total -> asManyOrFewer(counted, total, f) <= tail) - 1;
        return new Limits(lower, upper);
    }

    /** P(X ≥ c) for X ~ Binomial(total, f). */
    private static double asManyOrMore(long counted, long total, double f) {
        return total < counted
                ? 0
                : Beta.regularizedBeta(f, (double) counted, total - counted + 1.0);
    }

    /** P(X ≤ c), with all its digits where it is small. */
    private static double asManyOrFewer(long counted, long total, double f) {
        return total <= counted
                ? 1
                : Beta.regularizedBeta(1 - f, (double) total - counted, counted + 1.0);
    }

    /** The first number from {@code least} on for which a condition holds from there for ever. */
    private static long first(long least, LongPredicate holds) {
        long step = 1;
        while (!holds.test(least + step)) {
            step *= 2;
        }
        long low = least - 1;
        long high = least + step;
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (holds.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /**
     * The total corrected for extraction.
     *
     * <p>Total / e with the standard error total · √(v/c² + (se/e)²): the delta method, good while
     * both parts are small.
     *
     * @param varianceOfCounted variance of the number counted, 0 or more
     * @param efficiency extraction efficiency e, in (0, 1]
     * @param efficiencyError its standard error, 0 or more
     * @return estimate and standard error
     * @throws InvalidInput if a number is out of range or nothing was counted
     */
    public TwoStageTotal corrected(
            double varianceOfCounted, double efficiency, double efficiencyError) {
        Require.notNegative("varianceOfCounted", varianceOfCounted);
        Require.share("efficiency", efficiency);
        Require.notNegative("efficiencyError", efficiencyError);
        Require.atLeast("counted", counted, 1);
        double total = estimate / efficiency;
        double relative =
                Math.hypot(Math.sqrt(varianceOfCounted) / counted, efficiencyError / efficiency);
        return new TwoStageTotal(total, total * relative);
    }
}
