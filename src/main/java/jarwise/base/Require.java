package jarwise.base;

/** Checks of arguments. Each is written as the allowed condition, so that NaN falls through. */
public final class Require {

    private Require() {}

    /**
     * Returns {@code value} if it is a finite number above 0.
     *
     * @param name what the value is, as a scout would call it
     * @param value the number to check
     * @return {@code value}
     * @throws InvalidInput if it is 0, negative, infinite or NaN
     */
    public static double positive(String name, double value) {
        if (value > 0 && value < Double.POSITIVE_INFINITY) {
            return value;
        }
        throw new InvalidInput("%s is %s; it must be above 0.".formatted(name, value));
    }

    /**
     * Returns {@code value} if it is a finite number, 0 or more.
     *
     * @param name what the value is, as a scout would call it
     * @param value the number to check
     * @return {@code value}
     * @throws InvalidInput if it is negative, infinite or NaN
     */
    public static double notNegative(String name, double value) {
        if (value >= 0 && value < Double.POSITIVE_INFINITY) {
            return value;
        }
        throw new InvalidInput("%s is %s; it must be 0 or more.".formatted(name, value));
    }

    /**
     * Returns {@code value} if it is a share: above 0 and at most 1.
     *
     * @param name what the value is, as a scout would call it
     * @param value the number to check
     * @return {@code value}
     * @throws InvalidInput if it is outside (0, 1] or NaN
     */
    public static double share(String name, double value) {
        if (value > 0 && value <= 1) {
            return value;
        }
        String advice = value > 1 && value <= 100 ? " Maybe it is meant in per cent." : "";
        throw new InvalidInput(
                "%s is %s; it must be above 0 and at most 1.%s".formatted(name, value, advice));
    }

    /**
     * Returns {@code value} if it lies strictly between two bounds.
     *
     * @param name what the value is, as a scout would call it
     * @param value the number to check
     * @param low lower bound, excluded
     * @param high upper bound, excluded
     * @return {@code value}
     * @throws InvalidInput if it is outside or NaN
     */
    public static double between(String name, double value, double low, double high) {
        if (value > low && value < high) {
            return value;
        }
        throw new InvalidInput(
                "%s is %s; it must be above %s and below %s.".formatted(name, value, low, high));
    }

    /**
     * Returns {@code value} if it is at least {@code least}.
     *
     * @param name what the value is, as a scout would call it
     * @param value the whole number to check
     * @param least smallest allowed value
     * @return {@code value}
     * @throws InvalidInput if it is smaller
     */
    public static long atLeast(String name, long value, long least) {
        if (value >= least) {
            return value;
        }
        throw new InvalidInput("%s is %d; it must be %d or more.".formatted(name, value, least));
    }

    /**
     * Returns {@code text} if it has anything but white space in it.
     *
     * @param name what the text is, as a scout would call it
     * @param text the text to check
     * @return {@code text}
     * @throws InvalidInput if it is empty or blank
     */
    public static String notBlank(String name, String text) {
        if (!text.isBlank()) {
            return text;
        }
        throw new InvalidInput("%s is empty; it must be given.".formatted(name));
    }
}
