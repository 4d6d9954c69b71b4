package jarwise.stats.removal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.PanelFunction;
import jarwise.numeric.PeakPanels;
import jarwise.stats.estimate.DetectionShare;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Share that one wash brings off, from spikes and repeat washes together.
 *
 * @param estimate expected share, in (0, 1)
 * @param standardError its standard deviation
 * @param lower lower limit
 * @param upper upper limit
 */
public record ExtractionEfficiency(
        double estimate, double standardError, double lower, double upper) {

    /** Shares nearer to 0 or 1 than e^−40 are not looked at. */
    private static final int POINTS = 16;

    private static final double FARTHEST_LOGIT = 40;

    /**
     * What share does one wash bring off?
     *
     * <p>Spikes give Beta(found + ½, known − found + ½). Each series of washes multiplies that by
     * the chance of its catches given their total,
     *
     * <pre>  p^T q^(Σ (i − 1) c_i) / (1 − q^s)^T,  q = 1 − p</pre>
     *
     * which is also what is left of the removal likelihood when the number on the material is
     * weighted by 1/N and added up. Mean, standard deviation and equal tails of the product.
     * <b>Assumes</b> that spiked insects come off as easily as those that live there (they do not
     * sit in buds: the spike errs on the high side), and one share for all washes. Keep pests,
     * stages, fluids and crops apart; plain water is a fluid of its own.
     *
     * <p><b>Source.</b> Jeffreys' prior for a share; the conditional likelihood is Zippin's (1956,
     * from memory); that both are multiplied is our own. Checked by {@code
     * reference/extraction-efficiency/posterior.csv}, SciPy quadrature of the same product.
     *
     * @param found individuals of spikes found again, 0 to {@code known}
     * @param known individuals of spikes, 0 if there was none
     * @param series repeat washes, each of its own material; may be empty if there was a spike
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the share
     * @throws InvalidInput if a number is out of range, or there is neither spike nor series
     */
    public static ExtractionEfficiency of(
            long found, long known, List<RemovalCatches> series, double confidenceLevel) {
        Require.atLeast("known", known, series.isEmpty() ? 1 : 0);
        SpikeFinds all = new SpikeFinds(found, known, DetectionShare.known(1));
        return of(List.of(all), series, confidenceLevel);
    }

    /**
     * What share does one wash bring off, when readers who overlook some counted the spikes?
     *
     * <pre>
     *   spikes: the average of (e s)^found (1 − e s)^missed over what is open about s
     * </pre>
     *
     * <p>e is the share washed off, s the reader's sensitivity; everything else as above. Washes
     * need no such correction where one reader counted them all: what is overlooked in every wash
     * alike leaves the share by which they fall off as it is. <b>Assumes</b> that s was measured
     * apart from these spikes.
     *
     * <p><b>Source.</b> Our own product of the two. Checked by {@code
     * reference/extraction-efficiency/imperfect-reader.csv}, own arithmetic on a grid.
     *
     * @param spikes by reader; may be empty if there is a series
     * @param series repeat washes, each of its own material; may be empty if there was a spike
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the share
     * @throws InvalidInput if a number is out of range, or there is neither spike nor series
     */
    public static ExtractionEfficiency of(
            List<SpikeFinds> spikes, List<RemovalCatches> series, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        long known = spikes.stream().mapToLong(SpikeFinds::known).sum();
        Require.atLeast("known", known, series.isEmpty() ? 1 : 0);
        Posterior posterior =
                new Posterior(
                        spikes.stream().map(SpikeFinds::logChance).toList(), List.copyOf(series));
        double peak = posterior.peak();
        double width = posterior.width(peak);
        double tail = (1 - confidenceLevel) / 2;
        PanelFunction density =
                PeakPanels.of(posterior::logDensity, peak, width, Double.POSITIVE_INFINITY, tail);
        double mass = posterior.moment(0, peak, density);
        double mean = posterior.moment(1, peak, density) / mass;
        double square = posterior.moment(2, peak, density) / mass;
        double beyond = tail * density.integral();
        double fromBelow = Posterior.share(density.inverseIntegral(beyond));
        double fromAbove = Posterior.share(density.inverseIntegralFrom(beyond));
        // Near a level of 0 both are the median, which rounding may put in the wrong order.
        return new ExtractionEfficiency(
                mean,
                Math.sqrt(Math.max(0, square - mean * mean)),
                Math.min(fromBelow, fromAbove),
                Math.max(fromBelow, fromAbove));
    }

    /**
     * The share as the estimate of a density takes it.
     *
     * @return found of known, both whole, whose Beta distribution is nearest in mean and spread
     */
    public DetectionShare.Measured share() {
        double shapes = estimate * (1 - estimate) / (standardError * standardError) - 1;
        long known = Math.max(1, Math.round(shapes - 1));
        long found = Math.round(estimate * shapes - 0.5);
        return new DetectionShare.Measured(Math.min(known, Math.max(0, found)), known);
    }

    /** The distribution of x = ln(p/(1 − p)), up to a factor. */
    private record Posterior(List<SpikeFinds.LogChance> spikes, List<RemovalCatches> series) {

        static double share(double x) {
            return 1 / (1 + Math.exp(-x));
        }

        private static double logOnePlusExp(double x) {
            return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
        }

        double logDensity(double x) {
            double logShare = -logOnePlusExp(-x);
            double logRest = -logOnePlusExp(x);
            double sum = 0.5 * logShare + 0.5 * logRest;
            for (SpikeFinds.LogChance spike : spikes) {
                sum += spike.at(logShare);
            }
            for (RemovalCatches catches : series) {
                double caught = catches.total();
                double logCaught = Math.log(-Math.expm1(catches.washes() * logRest));
                sum += caught * (logShare - logCaught) + catches.washesBefore() * logRest;
            }
            return sum;
        }

        double peak() {
            return new BrentOptimizer(1e-10, 1e-12)
                    .optimize(
                            new MaxEval(1000),
                            new UnivariateObjectiveFunction(this::logDensity),
                            GoalType.MAXIMIZE,
                            new SearchInterval(-FARTHEST_LOGIT, FARTHEST_LOGIT))
                    .getPoint();
        }

        double width(double peak) {
            double step = 1e-3;
            double curvature =
                    2 * logDensity(peak) - logDensity(peak - step) - logDensity(peak + step);
            return step / Math.sqrt(Math.max(curvature, 1e-4 * step * step));
        }

        /** Integral of density times a power of the share, over the panels of the density. */
        double moment(int power, double peak, PanelFunction density) {
            GaussIntegratorFactory gauss = new GaussIntegratorFactory();
            double top = logDensity(peak);
            double sum = 0;
            for (int panel = 0; panel < density.panels(); panel++) {
                sum +=
                        gauss.legendre(POINTS, density.edge(panel), density.edge(panel + 1))
                                .integrate(
                                        x ->
                                                Math.exp(
                                                        logDensity(x)
                                                                - top
                                                                - power * logOnePlusExp(-x)));
            }
            return sum;
        }
    }
}
