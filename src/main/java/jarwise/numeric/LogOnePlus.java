package jarwise.numeric;

/** The logarithm of 1 + a / b, for a / b of any size. */
public final class LogOnePlus {

    private LogOnePlus() {}

    /**
     * ln(1 + a / b), also where a / b is beyond all numbers.
     *
     * @param a 0 or more
     * @param b above 0
     * @return 0 or more
     */
    public static double ratio(double a, double b) {
        double ratio = a / b;
        return Double.isInfinite(ratio) ? Math.log(a) - Math.log(b) : Math.log1p(ratio);
    }
}
