package jarwise.stats.sequential;

import jarwise.base.InvalidInput;

/**
 * Samples that are only asked whether they hold as many individuals as the tally threshold, or
 * more: binomial.
 *
 * <p>With p the proportion of samples at or over the tally threshold, the cumulative count is the
 * number of such samples; evidence per such sample is ln(p1·(1 − p0) / (p0·(1 − p1))), evidence per
 * sample ln((1 − p0)/(1 − p1)). {@link TallyThreshold} tells the proportion at a density.
 *
 * <p><b>Assumes</b> samples drawn independently, and of the same number of sampling units.
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i>, ch. 5 (formulas from memory).
 * Reference values: {@code reference/sequential/stop-lines.csv}.
 */
public record PresenceAbsence() implements SampleModel {

    @Override
    public double evidencePerIndividual(double lowerMean, double upperMean) {
        return Math.log1p((upperMean - lowerMean) / lowerMean / (1 - upperMean));
    }

    @Override
    public double evidencePerSample(double lowerMean, double upperMean) {
        return Math.log1p((upperMean - lowerMean) / (1 - upperMean));
    }

    @Override
    public SampleChances chances(double mean, int most) {
        return SampleChances.ofPresence(requireMean("proportion", mean));
    }

    @Override
    public double cumulants(double mean, double s) {
        return Math.log1p(mean * Math.expm1(s));
    }

    @Override
    public double largestArgument(double mean) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double variance(double mean) {
        return mean * (1 - mean);
    }

    @Override
    public double requireMean(String name, double mean) {
        if (mean >= 0 && mean <= 1) {
            return mean;
        }
        throw new InvalidInput(
                ("%s is %s; a proportion of samples is asked for, 0 to 1."
                                + " Maybe it is meant in per cent, or as a density: then leave out"
                                + " the presence-absence.")
                        .formatted(name, mean));
    }
}
