package jarwise.render.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Rounds to the digits a scout can use: two, from 100 on three, and below 0.1 one where that is
 * within a tenth of the two. Works on the shortest decimal of a double, so that 0.1 stays 0.1 and a
 * bound rounded up never ends below the bound.
 */
final class Rounding {

    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    private Rounding() {}

    static BigDecimal nearest(double value) {
        return rounded(value, RoundingMode.HALF_UP);
    }

    static BigDecimal up(double value) {
        return rounded(value, RoundingMode.CEILING);
    }

    static BigDecimal down(double value) {
        return rounded(value, RoundingMode.FLOOR);
    }

    private static BigDecimal rounded(double value, RoundingMode mode) {
        BigDecimal exact = BigDecimal.valueOf(value);
        if (exact.signum() == 0) {
            return BigDecimal.ZERO;
        }
        int digits = exact.abs().compareTo(HUNDRED) < 0 ? 2 : 3;
        BigDecimal rounded = exact.round(new MathContext(digits, mode));
        if (exact.abs().compareTo(TENTH) >= 0) {
            return rounded;
        }
        BigDecimal oneDigit = exact.round(new MathContext(1, mode));
        BigDecimal moved = oneDigit.subtract(rounded).abs();
        boolean near = moved.compareTo(rounded.abs().multiply(TENTH)) <= 0;
        return near ? oneDigit : rounded;
    }

    /**
     * The largest whole number n that is easy to say with 1/n not below {@code bound}: an upper
     * bound said as "1 in n" is never tighter than it is.
     */
    static long oneInAtLeast(double bound) {
        long n = (long) Math.floor(1 / bound + 1e-9);
        while (n > 1 && 1.0 / n < bound) {
            n--;
        }
        return n - n % step(n);
    }

    /** The smallest n that is easy to say with 1/n not above {@code bound}. */
    static long oneInAtMost(double bound) {
        long n = (long) Math.ceil(1 / bound - 1e-9);
        while (1.0 / n > bound) {
            n++;
        }
        // The step belongs to the number it leads to, so that 26 goes to 30 and not to 26.
        return (n + step(n) - 1) / step(n) * step(n);
    }

    /** The n easy to say that is nearest to 1 / density. */
    static long oneInNearest(double density) {
        long n = Math.round(1 / density);
        long step = step(n);
        return Math.round((double) n / step) * step;
    }

    private static long step(long n) {
        if (n <= 25) {
            return 1;
        }
        long step = 5;
        while (n > 20 * step) {
            step *= 10;
        }
        return step;
    }
}
