package jarwise.render.words;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * What is known of one quantity, as it is shown: the same five cases in words, strips and trends. A
 * zero that was counted, a jar that was not read and a bench that was not sampled never look alike.
 */
public sealed interface Interval {

    /**
     * Something was found.
     *
     * @param estimate best value
     * @param lower lower limit
     * @param upper upper limit, not below {@code lower}; empty where the data set none
     */
    record Found(double estimate, double lower, OptionalDouble upper) implements Interval {
        public Found {
            if (!(Double.isFinite(estimate) && Double.isFinite(lower))) {
                throw new InvalidInput("estimate is %s from %s".formatted(estimate, lower));
            }
            if (upper.isPresent() && !(upper.getAsDouble() >= lower)) {
                throw new InvalidInput(
                        "upper limit is %s; it must be at least the lower one, %s"
                                .formatted(upper.getAsDouble(), lower));
            }
        }
    }

    /**
     * Looked for and none found: not zero there, but below a bound.
     *
     * @param upper the bound, above 0; empty where the data set none
     */
    record NoneFound(OptionalDouble upper) implements Interval {
        public NoneFound {
            if (upper.isPresent()) {
                Require.positive("upper bound", upper.getAsDouble());
            }
        }
    }

    /**
     * Only a lower bound is known, as for a ratio to a zero.
     *
     * @param lower the bound
     */
    record AtLeast(double lower) implements Interval {
        public AtLeast {
            Require.positive("lower bound", lower);
        }
    }

    /** Nobody looked. */
    record NotSampled() implements Interval {}

    /** Cut and washed, not yet counted. */
    record NotRead() implements Interval {}

    /** {@return an estimate between two limits} */
    static Interval found(double estimate, double lower, double upper) {
        return new Found(estimate, lower, OptionalDouble.of(upper));
    }

    /** {@return none found, and what could still be there} */
    static Interval noneFound(double upper) {
        return new NoneFound(OptionalDouble.of(upper));
    }
}
