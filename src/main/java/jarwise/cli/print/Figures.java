package jarwise.cli.print;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/** Numbers for the eyes: four digits that count, no exponents. */
public final class Figures {

    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Figures() {}

    /** {@return a number in four digits} */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            return value > 0 ? "Inf" : "-";
        }
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** {@return a number in four digits, or a dash where there is none} */
    public static String of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : "-";
    }

    /** {@return the p of a test, not smaller than anybody cares for; a dash where there is none} */
    public static String p(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() < 0.0001 ? "< 0.0001" : of(value);
    }

    /** Chances are shown as per cent, and only to people; none is shown as certain that is not. */
    public static String percent(double share) {
        if (share > 0.9995 && share < 1) {
            return "> 99.9 %";
        }
        if (share > 0 && share < 0.0005) {
            return "< 0.1 %";
        }
        return of(Math.round(share * 1000) / 10.0) + " %";
    }
}
