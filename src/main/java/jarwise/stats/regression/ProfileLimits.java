package jarwise.stats.regression;

import java.util.OptionalDouble;

/**
 * The values that the counts do not contradict.
 *
 * @param lower lower limit; empty where there is none
 * @param upper upper limit; empty where there is none
 */
public record ProfileLimits(OptionalDouble lower, OptionalDouble upper) {

    /** {@return the limits of the negative value} */
    public ProfileLimits negated() {
        return new ProfileLimits(negated(upper), negated(lower));
    }

    /** {@return the limits of the exponential} */
    public ProfileLimits exponential() {
        return new ProfileLimits(exponential(lower), exponential(upper));
    }

    private static OptionalDouble negated(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(-value.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble exponential(OptionalDouble value) {
        return value.isPresent()
                ? OptionalDouble.of(Math.exp(value.getAsDouble()))
                : OptionalDouble.empty();
    }
}
