package jarwise.numeric;

import org.hipparchus.special.Gamma;

/**
 * What Stirling's formula leaves out, and the deviance it goes with: the two halves of the
 * saddle-point form of Loader (2000), <i>Fast and accurate computation of binomial
 * probabilities</i>, which keeps all digits where the plain difference of log gammas loses them.
 */
final class StirlingError {

    private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
    private static final double SERIES_FROM = 16;

    private StirlingError() {}

    /** {@return ln Γ(z) − (z − ½) ln z + z − ½ ln 2π, for z above 0} */
    static double of(double z) {
        if (z >= SERIES_FROM) {
            double square = 1 / (z * z);
            return (1.0 / 12
                            - square
                                    * (1.0 / 360
                                            - square * (1.0 / 1260 - square * lastTerms(square))))
                    / z;
        }
        if (z < 1) {
            return Gamma.logGamma1p(z) - (z + 0.5) * Math.log(z) + z - HALF_LOG_TWO_PI;
        }
        // one step up costs a logarithm and no digits: error(z) − error(z + 1) is itself a short
        // series
        return of(z + 1) + (z + 0.5) * Math.log1p(1 / z) - 1;
    }

    private static double lastTerms(double square) {
        return 1.0 / 1680 - square * (1.0 / 1188 - square * 691.0 / 360360);
    }

    /**
     * {@return x ln(x / mean) + mean − x, without cancellation near x = mean; x and mean above 0}
     */
    static double deviance(double x, double mean) {
        double difference = x - mean;
        if (Math.abs(difference) >= 0.1 * (x + mean)) {
            return x * Math.log(x / mean) + mean - x;
        }
        double v = difference / (x + mean);
        double sum = difference * v;
        double term = 2 * x * v;
        for (int j = 1; j < 1000; j++) {
            term *= v * v;
            double next = sum + term / (2 * j + 1);
            if (next == sum) {
                break;
            }
            sum = next;
        }
        return sum;
    }
}
