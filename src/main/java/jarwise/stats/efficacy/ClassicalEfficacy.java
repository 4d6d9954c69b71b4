package jarwise.stats.efficacy;

import jarwise.base.Require;
import jarwise.numeric.Quantiles;
import java.util.OptionalDouble;

/**
 * The efficacy of a treatment as the textbooks write it, from densities or mortalities alone. A
 * negative value, more on the treated plants than without treatment, stays negative.
 */
public final class ClassicalEfficacy {

    private ClassicalEfficacy() {}

    /** Two limits of an efficacy, as shares of 1. */
    public record Limits(double lower, double upper) {}

    /**
     * What share of those that would live without treatment does it kill? From the living after.
     *
     * <pre>
     *   1 − treated / check
     * </pre>
     *
     * <p><b>Assumes</b> that both had the same density before.
     *
     * <p><b>Source.</b> Abbott (1925), <i>Journal of Economic Entomology</i> 18:265-267. Reference
     * values: {@code reference/efficacy/classical.csv}.
     *
     * @param treatedAfter density on the treated plants after, 0 or more
     * @param checkAfter density on the check after, 0 or more
     * @return at most 1; empty where nothing lives on the check
     */
    public static OptionalDouble abbott(double treatedAfter, double checkAfter) {
        Require.notNegative("treatedAfter", treatedAfter);
        Require.notNegative("checkAfter", checkAfter);
        return checkAfter > 0
                ? OptionalDouble.of(1 - treatedAfter / checkAfter)
                : OptionalDouble.empty();
    }

    /**
     * Abbott's formula from shares dead; Schneider-Orelli (1947) is the same.
     *
     * <pre>
     *   (treatedMortality − checkMortality) / (1 − checkMortality)
     * </pre>
     *
     * @param treatedMortality share dead on the treated plants, 0 to 1
     * @param checkMortality share dead on the check, 0 to 1
     * @return at most 1; empty where the whole check is dead
     */
    public static OptionalDouble ofMortalities(double treatedMortality, double checkMortality) {
        return abbott(1 - mortality(treatedMortality), 1 - mortality(checkMortality));
    }

    private static double mortality(double value) {
        return Require.between("mortality", value, -Double.MIN_VALUE, Math.nextUp(1.0));
    }

    /**
     * What share does it kill, allowing for the difference there was before and for what the check
     * did by itself?
     *
     * <pre>
     *   1 − (treatedAfter · checkBefore) / (treatedBefore · checkAfter)
     * </pre>
     *
     * <p><b>Assumes</b> that without treatment both would have changed by the same factor.
     *
     * <p><b>Source.</b> Henderson and Tilton (1955), <i>Journal of Economic Entomology</i>
     * 48:157-161 (formula from memory). Reference values: {@code reference/efficacy/classical.csv}.
     *
     * @param treated densities on the treated plants, before and after
     * @param check densities on the check, before and after
     * @return at most 1; empty where a density before, or the check after, is 0
     */
    public static OptionalDouble hendersonTilton(BeforeAfter treated, BeforeAfter check) {
        if (treated.before() > 0 && check.before() > 0 && check.after() > 0) {
            return OptionalDouble.of(
                    1 - treated.after() * check.before() / (treated.before() * check.after()));
        }
        return OptionalDouble.empty();
    }

    /**
     * Sun and Shepard's formula: mortality of the treated, corrected by the change of the check.
     * From the same densities it is Henderson and Tilton's value, not a second opinion.
     *
     * <pre>
     *   (treatedMortality + checkChange) / (1 + checkChange)
     * </pre>
     *
     * <p><b>Source.</b> Sun and Shepard (1947), <i>Journal of Economic Entomology</i> 40:710-715
     * (formula from memory).
     *
     * @param treatedMortality fall on the treated plants over what was there before, at most 1
     * @param checkChange rise on the check over what was there before; negative for a fall, above
     *     −1
     * @return at most 1; empty where nothing is left on the check
     */
    public static OptionalDouble sunShepard(double treatedMortality, double checkChange) {
        return checkChange > -1
                ? OptionalDouble.of((treatedMortality + checkChange) / (1 + checkChange))
                : OptionalDouble.empty();
    }

    /**
     * Limits of Henderson and Tilton's value if the four totals were Poisson counts. Insects clump,
     * so these are far too narrow for jars (36 to 72 % instead of 95 in the coverage study); for
     * checks against other software only.
     *
     * <p><b>Source.</b> Delta method: the variance of the logarithm of a count is 1/count.
     * Reference values: {@code reference/efficacy/own-arithmetic.csv}.
     *
     * @param treated totals of the treated, above 0, from equal samples before and after
     * @param check totals of the check, above 0
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the limits
     */
    public static Limits poissonLimits(
            BeforeAfter treated, BeforeAfter check, double confidenceLevel) {
        double variance =
                1 / Require.positive("treated before", treated.before())
                        + 1 / Require.positive("treated after", treated.after())
                        + 1 / Require.positive("check before", check.before())
                        + 1 / Require.positive("check after", check.after());
        double ratio = treated.after() * check.before() / (treated.before() * check.after());
        return logLimits(ratio, Math.sqrt(variance), confidenceLevel);
    }

    /**
     * Limits of Abbott's value from numbers dead out of numbers observed, each individual by
     * itself.
     *
     * <p><b>Source.</b> Delta method: the variance of the logarithm of a share surviving q of n is
     * (1 − q) / (n q). Reference values: {@code reference/efficacy/own-arithmetic.csv}.
     *
     * @param treated survivors out of observed on the treated plants
     * @param check survivors out of observed on the check
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the limits
     */
    public static Limits abbottBinomialLimits(
            Survivors treated, Survivors check, double confidenceLevel) {
        double error = Math.sqrt(treated.varianceOfLog() + check.varianceOfLog());
        return logLimits(treated.share() / check.share(), error, confidenceLevel);
    }

    private static Limits logLimits(double ratio, double error, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        double reach = Quantiles.normal(confidenceLevel) * error;
        return new Limits(1 - ratio * Math.exp(reach), 1 - ratio * Math.exp(-reach));
    }

    /**
     * Densities, or totals of equal samples, on the same plants.
     *
     * @param before before the treatment, 0 or more
     * @param after after it, 0 or more
     */
    public record BeforeAfter(double before, double after) {

        /** Checks both. */
        public BeforeAfter {
            Require.notNegative("before", before);
            Require.notNegative("after", after);
        }
    }

    /**
     * Survivors among individuals that were watched.
     *
     * @param alive survivors, 1 or more
     * @param observed all of them, at least {@code alive}
     */
    public record Survivors(long alive, long observed) {

        /** Checks both. */
        public Survivors {
            Require.atLeast("alive", alive, 1);
            Require.atLeast("observed", observed, alive);
        }

        double share() {
            return (double) alive / observed;
        }

        double varianceOfLog() {
            return (1 - share()) / alive;
        }
    }
}
