package jarwise.stats.filter;

import jarwise.numeric.Quantiles;
import org.hipparchus.distribution.continuous.LogNormalDistribution;

/**
 * Cells differ more than chance has it: the unread number is log-normal with the mean of the read
 * cells and the variance that drawing cells gives.
 *
 * @param distribution of the unread individuals, on a continuous scale
 */
record UnreadByCells(LogNormalDistribution distribution) implements UnreadIndividuals {

    /** {@return the log-normal distribution with this mean and variance, both above 0} */
    static UnreadByCells of(double mean, double variance) {
        double spread = Math.log1p(variance / (mean * mean));
        return new UnreadByCells(
                new LogNormalDistribution(Math.log(mean) - spread / 2, Math.sqrt(spread)));
    }

    @Override
    public double standardDeviation() {
        return Math.sqrt(distribution.getNumericalVariance());
    }

    @Override
    public double cumulativeProbability(long individuals) {
        return distribution.cumulativeProbability(individuals + 0.5);
    }

    @Override
    public double quantile(double probability) {
        return at(-Quantiles.normalAbove(probability));
    }

    @Override
    public double quantileAbove(double probability) {
        return at(Quantiles.normalAbove(probability));
    }

    private double at(double deviations) {
        return Math.exp(distribution.getLocation() + deviations * distribution.getShape());
    }
}
