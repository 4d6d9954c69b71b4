package jarwise.stats.regression;

import jarwise.base.InvalidInput;
import java.util.Arrays;
import java.util.OptionalInt;

/** Fits how counts depend on places, treatments and days. */
public final class NegativeBinomialRegression {

    /** A cell without a find whose fitted mean is less than this may be running off to 0. */
    private static final double NEARLY_NOTHING = 1e-6;

    private NegativeBinomialRegression() {}

    /**
     * How do counts depend on factors and covariates?
     *
     * <pre>
     *   ln mean = ln exposure + Σ coefficient · design,   variance = mean + mean²/k
     * </pre>
     *
     * Coefficients and ln k are climbed together by Newton's method from several starts, Poisson
     * among them; what is returned is the highest top, at which the slopes vanish. k is absent
     * where no finite k is better than Poisson. Counts of a level without any find drive its
     * coefficient to minus infinity: it is reported without an estimate, with the one limit that
     * exists, and the others are not harmed.
     *
     * <p><b>Assumes</b> independent samples with one k for all, also where their sampling units
     * differ. With few samples the limits are too short; see docs/methods.md.
     *
     * <p><b>Source.</b> Lawless (1987), <i>Canadian Journal of Statistics</i> 15:209-225; McCullagh
     * and Nelder (1989), <i>Generalized Linear Models</i>, ch. 2 (both from memory). Reference
     * values: {@code reference/regression}.
     *
     * @param frame counts with their design
     * @return the fit
     * @throws InvalidInput if a coefficient cannot be told from the others
     */
    public static RegressionFit fit(ModelFrame frame) {
        Design design = frame.design();
        refuseAliased(frame);
        Maximum top = design.allIndividuals() == 0 ? nothing(design) : new Climb(design).highest();
        return new RegressionFit(frame, top, telling(design, top));
    }

    /**
     * The same with counts taken as Poisson, whatever they look like.
     *
     * @param frame counts with their design
     * @return the fit, without k
     * @throws InvalidInput if a coefficient cannot be told from the others
     */
    public static RegressionFit poisson(ModelFrame frame) {
        Design design = frame.design();
        refuseAliased(frame);
        Maximum top = design.allIndividuals() == 0 ? nothing(design) : new Climb(design).poisson();
        return new RegressionFit(frame, top, telling(design, top));
    }

    private static void refuseAliased(ModelFrame frame) {
        OptionalInt aliased = new SymmetricSystem(frame.design().products(cell -> true)).vanished();
        if (aliased.isPresent()) {
            Coefficient coefficient = frame.coefficients().get(aliased.getAsInt());
            throw new InvalidInput(
                    ("The effect of \"%s\" can't be told from the others: its column follows from"
                         + " theirs. Maybe it stands for the same thing as another column, or some"
                         + " combination was never sampled.")
                            .formatted(coefficient));
        }
    }

    /** Where nothing was found every mean goes to 0, and the likelihood to 1. */
    private static Maximum nothing(Design design) {
        double[] coefficients = new double[design.columns()];
        return new Maximum(
                coefficients,
                Double.POSITIVE_INFINITY,
                new LikelihoodPass.Sums(0, coefficients, 0, 0, coefficients, new double[0][0]),
                true);
    }

    /** The cells that hold coefficients in place: all but those that run off to a mean of 0. */
    private static boolean[] telling(Design design, Maximum top) {
        boolean[] telling = new boolean[design.cells()];
        boolean anything = design.allIndividuals() > 0;
        boolean all = true;
        for (int cell = 0; cell < telling.length; cell++) {
            double mean =
                    design.samples()[cell] * Math.exp(design.logMean(cell, top.coefficients()));
            telling[cell] = anything && (design.individuals()[cell] > 0 || mean > NEARLY_NOTHING);
            all &= telling[cell];
        }
        if (!all && isRegular(design, telling)) {
            Arrays.fill(telling, true);
        }
        return telling;
    }

    /** Small means alone are no fault: the other cells may hold every coefficient in place. */
    private static boolean isRegular(Design design, boolean[] telling) {
        return new SymmetricSystem(design.products(cell -> telling[cell])).vanished().isEmpty();
    }
}
