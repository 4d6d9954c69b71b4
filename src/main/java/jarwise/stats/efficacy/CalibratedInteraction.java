package jarwise.stats.efficacy;

import jarwise.stats.count.CountLikelihood;
import jarwise.stats.efficacy.BenchChange.ChangeGrid;
import jarwise.stats.estimate.KPrior;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The distribution that the calibrated interval is read from: of the interaction, the change in ln
 * density on the treated benches less that on the check.
 *
 * <p>Given k the four ln densities are independent, each with its likelihood times a weight; sums
 * over an even grid give the distribution of their difference of differences. Then k is averaged
 * over, with its prior.
 */
final class CalibratedInteraction {

    private static final double NEGLIGIBLE = -21; // logarithm, against the highest point
    private static final double NEGLIGIBLE_K = -18; // logarithm, against the likeliest k
    private static final double BELOW_TAIL = -14; // logarithm, against the tail
    private static final double PLAIN_TAIL = -9; // logarithm; below it features are narrower
    private static final double STEPS_PER_DEVIATION = 2;
    private static final double FINEST_STEP = 0.015; // against the widest deviation
    private static final double WIDEST_STEP = 0.25;
    private static final double K_STEPS = 0.75;
    private static final double WIDEST_K_STEP = 0.6;

    private final List<BenchChange> treated;
    private final List<BenchChange> check;
    private final KPrior prior;
    private final double logTail;
    private final List<CountLikelihood> cells;
    private final double kCentre;
    private final double kStep;
    private final double step;
    private final MixedCurve distribution;

    /**
     * Works it out.
     *
     * @param trial samples, with a find in each of the four groups
     * @param prior what is known of k
     * @param tail smallest share that a quantile is wanted for
     */
    CalibratedInteraction(EfficacyTrial trial, KPrior prior, double tail) {
        treated = changes(trial.treated());
        check = changes(trial.check());
        this.prior = prior;
        logTail = Math.log(tail);
        cells =
                Stream.concat(treated.stream(), check.stream())
                        .flatMap(bench -> Stream.of(bench.likelihoods()))
                        .toList();
        kCentre = likeliestLogK();
        kStep = Math.min(WIDEST_K_STEP, K_STEPS * deviationOfLogK()) / Math.sqrt(finer());
        step = gridStep();
        distribution = mixed();
    }

    private static List<BenchChange> changes(List<TrialBench> benches) {
        return benches.stream()
                .filter(bench -> !bench.before().isEmpty() && !bench.after().isEmpty())
                .map(BenchChange::new)
                .filter(BenchChange::hasFind)
                .sorted(Comparator.comparingDouble(BenchChange::start))
                .toList();
    }

    /** {@return whether each arm has a bench with samples from before and after, and a find} */
    static boolean isPossible(EfficacyTrial trial) {
        return !changes(trial.treated()).isEmpty() && !changes(trial.check()).isEmpty();
    }

    /** {@return the interaction that this share of the distribution lies under} */
    double lower(double share) {
        return origin() + step * distribution.lower(share);
    }

    /** {@return the interaction that this share of the distribution lies above} */
    double upper(double share) {
        return origin() + step * distribution.upper(share);
    }

    private double origin() {
        return treated.get(0).start() - check.get(0).start();
    }

    /** How much finer than for the usual levels the grids must be. */
    private double finer() {
        return Math.max(1, logTail / PLAIN_TAIL);
    }

    private MixedCurve mixed() {
        List<GridCurve> curves = new ArrayList<>();
        List<Double> logWeights = new ArrayList<>();
        double top = Double.NEGATIVE_INFINITY;
        double floor = Math.min(NEGLIGIBLE_K, logTail + BELOW_TAIL);
        for (int direction : new int[] {-1, 1}) {
            double height = top;
            for (int i = direction < 0 ? 0 : 1; height >= top + floor; i++) {
                double logK = kCentre + direction * i * kStep;
                GridCurve curve = interaction(Math.exp(logK));
                height = curve.logSum() + logWeight(logK);
                top = Math.max(top, height);
                curves.add(curve);
                logWeights.add(logWeight(logK));
            }
        }
        return MixedCurve.of(curves, logWeights);
    }

    private GridCurve interaction(double k) {
        return arm(treated, k).minus(arm(check, k));
    }

    private GridCurve arm(List<BenchChange> benches, double k) {
        ChangeGrid grid =
                new ChangeGrid(
                        benches.get(0).start(), step, Math.min(NEGLIGIBLE, logTail + BELOW_TAIL));
        GridCurve product = benches.get(0).at(k, grid, benches.size());
        for (BenchChange bench : benches.subList(1, benches.size())) {
            product = product.times(bench.at(k, grid, benches.size()));
        }
        return product;
    }

    private double logWeight(double logK) {
        double z = (logK - Math.log(prior.medianK())) / prior.logSpread();
        return -0.5 * z * z;
    }

    /** A step that the narrowest of the groups needs, or that the widest makes good enough. */
    private double gridStep() {
        double k = Math.exp(kCentre);
        double narrowest = Double.POSITIVE_INFINITY;
        double widest = 0;
        for (CountLikelihood cell : cells) {
            double information = cell.informationOnLogDensity(BenchChange.start(cell), k);
            narrowest = Math.min(narrowest, 1 / Math.sqrt(information));
            widest = Math.max(widest, 1 / Math.sqrt(information));
        }
        double wanted = Math.max(narrowest / STEPS_PER_DEVIATION, FINEST_STEP * widest);
        return Math.min(WIDEST_STEP, wanted) / finer();
    }

    private double likeliestLogK() {
        double centre = Math.log(prior.medianK());
        double reach = 7 * prior.logSpread();
        double best = centre;
        double top = height(centre);
        double step = 0.25 * prior.logSpread();
        for (double x = centre - reach; x <= centre + reach; x += step) {
            double height = height(x);
            if (height > top) {
                top = height;
                best = x;
            }
        }
        for (int i = 0; i < 3; i++) {
            step *= 0.5;
            best = highest(best - step, best, best + step);
        }
        return best;
    }

    private double highest(double a, double b, double c) {
        double best = height(a) > height(b) ? a : b;
        return height(c) > height(best) ? c : best;
    }

    private double deviationOfLogK() {
        double h = 0.1 * prior.logSpread();
        double bend = (height(kCentre + h) - 2 * height(kCentre) + height(kCentre - h)) / (h * h);
        return bend < 0 ? 1 / Math.sqrt(-bend) : prior.logSpread();
    }

    /** Prior times likelihood with the densities integrated out by Laplace's formula, roughly. */
    private double height(double logK) {
        double k = Math.exp(logK);
        double sum = logWeight(logK);
        for (CountLikelihood cell : cells) {
            if (cell.data().individuals() > 0) {
                double top = cell.mostLikelyLogDensity(k);
                sum += cell.at(top, k) - 0.5 * Math.log(cell.informationOnLogDensity(top, k));
            }
        }
        return sum;
    }
}
