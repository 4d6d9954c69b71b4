package jarwise.stats.removal;

import jarwise.numeric.RisingFactorial;

/** A log-likelihood of the total, every other unknown fitted anew at each total. */
interface TotalLikelihood {

    /** {@return the log-likelihood at a total, {@link #least} or more} */
    double at(double total);

    /** {@return its derivative; minus infinity where it falls off a cliff} */
    double slope(double total);

    /** {@return what it tends to as the total grows without limit} */
    double limit();

    /** {@return whether it comes down to its limit, so that it has a maximum before} */
    boolean hasMaximum();

    /** {@return the smallest total there can be} */
    double least();

    /** {@return ln of N (N − 1) … (N − T + 1), T factors} */
    static double logWays(double total, long caught) {
        double last = total - caught + 1;
        return caught * Math.log(last) + RisingFactorial.logRatio(last, caught);
    }

    /** {@return the derivative of {@link #logWays}: 1/N + 1/(N − 1) + …, T terms} */
    static double slopeOfLogWays(double total, long caught) {
        double last = total - caught + 1;
        return (caught + RisingFactorial.slope(last, caught)) / last;
    }
}
