package jarwise.stats.sequential;

import jarwise.numeric.NegativeBinomial;

/**
 * Chances of what one sample adds to the cumulative count: each count up to a largest one, and so
 * many or more, the latter with all its digits where it is small.
 */
final class SampleChances {

    private final double[] exactly;
    private final double[] atLeast;

    private SampleChances(double[] exactly, double[] atLeast) {
        this.exactly = exactly;
        this.atLeast = atLeast;
    }

    static SampleChances ofPresence(double proportion) {
        return new SampleChances(
                new double[] {1 - proportion, proportion}, new double[] {1, proportion});
    }

    /**
     * Walks up and down from the likeliest count (or the largest one asked for) by the ratio of
     * neighbours, so that nothing is lost where the chance of 0 is too small for a number.
     */
    static SampleChances of(NegativeBinomial distribution, int most) {
        double mean = distribution.mean();
        double k = distribution.k();
        double[] exactly = new double[most + 1];
        double[] atLeast = new double[most + 1];
        int start = (int) Math.min(most, Math.max(0, Math.floor(mean - mean / k)));
        exactly[start] = distribution.probability(start);
        for (int y = start; y < most; y++) {
            exactly[y + 1] = exactly[y] * ratio(mean, k, y);
        }
        for (int y = start; y > 0; y--) {
            exactly[y - 1] = exactly[y] / ratio(mean, k, y - 1);
        }
        double above = distribution.exceedanceProbability(most);
        for (int y = most; y >= 0; y--) {
            above += exactly[y];
            atLeast[y] = above;
        }
        return new SampleChances(exactly, atLeast);
    }

    /** The chance of y + 1 over that of y. */
    private static double ratio(double mean, double k, int y) {
        double perClump = Double.isInfinite(k) ? mean : mean * ((k + y) / (k + mean));
        return perClump / (y + 1);
    }

    /** The chance of so many or more. */
    double atLeast(int y) {
        return y < atLeast.length ? atLeast[y] : 0;
    }

    /** Adds a weight times the chance of 0, 1, … to the entries from an offset on. */
    void addTo(double[] to, int offset, int end, double weight) {
        int counts = Math.min(end - offset, exactly.length);
        for (int y = 0; y < counts; y++) {
            to[offset + y] += weight * exactly[y];
        }
    }
}
