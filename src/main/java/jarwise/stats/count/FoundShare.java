package jarwise.stats.count;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Quantiles;

/**
 * Share found again of a known number: what a reader sees of a seeded filter, what a wash brings
 * off of a spike.
 *
 * @param found individuals found again
 * @param known individuals there were
 * @param estimate expected share, in (0, 1)
 * @param standardError its standard deviation
 * @param lower lower limit, in (0, 1)
 * @param upper upper limit, in (0, 1)
 */
public record FoundShare(
        long found, long known, double estimate, double standardError, double lower, double upper) {

    /**
     * What share is found, when so many of a known number were?
     *
     * <pre>
     *   Beta(found + ½, known − found + ½): mean, standard deviation, equal tails
     * </pre>
     *
     * <p>This is the distribution with which {@code estimate} corrects a density. <b>Assumes</b>
     * the same chance for each individual; filters that differ from each other make the limits too
     * near.
     *
     * <p><b>Source.</b> Jeffreys' prior for a share (textbook, from memory). Reference values:
     * {@code reference/found-share/beta.csv}, SciPy.
     *
     * @param found individuals found again, 0 to {@code known}
     * @param known individuals there were, 1 or more
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the share
     * @throws InvalidInput if a number is out of range
     */
    public static FoundShare of(long found, long known, double confidenceLevel) {
        Require.atLeast("known", known, 1);
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        if (!(found >= 0 && found <= known)) {
            throw new InvalidInput(
                    "found is %d of %d; it must be 0 to %d. Maybe the two numbers are swapped."
                            .formatted(found, known, known));
        }
        double a = found + 0.5;
        double b = known - found + 0.5;
        double mean = a / (a + b);
        double tail = (1 - confidenceLevel) / 2;
        return new FoundShare(
                found,
                known,
                mean,
                Math.sqrt(mean * (1 - mean) / (a + b + 1)),
                Quantiles.beta(a, b, tail),
                1 - Quantiles.beta(b, a, tail));
    }
}
