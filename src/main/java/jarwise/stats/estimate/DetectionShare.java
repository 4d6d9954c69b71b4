package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.BetaNodes;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Gamma;

/**
 * A share of individuals that gets through one step, extraction or reading: taken as known, or
 * measured on known numbers and then uncertain.
 */
public sealed interface DetectionShare {

    /**
     * A share taken as known.
     *
     * @param share above 0 and at most 1
     * @return the share
     * @throws InvalidInput if it is not
     */
    static DetectionShare known(double share) {
        return new Known(share);
    }

    /**
     * A share measured on individuals whose number was known: seeded filters, spiked jars.
     *
     * @param found individuals found again, 0 to {@code outOf}
     * @param outOf individuals there were, 1 or more
     * @return the share with its uncertainty
     * @throws InvalidInput if more were found than there were, or none were there
     */
    static DetectionShare measured(long found, long outOf) {
        return new Measured(found, outOf);
    }

    /** {@return the expected share} */
    double mean();

    /** {@return the variance of its natural logarithm; 0 where it is taken as known} */
    double varianceOfLog();

    /**
     * What a function of the share comes to on average, over what is open about the share.
     *
     * @param ofShare the function; it changes no faster than by its own size while the share
     *     changes by its own size
     * @return its value where the share is taken as known, else its expected value
     */
    double average(DoubleUnaryOperator ofShare);

    /** The farthest tail that any level of confidence asks for, and to spare. */
    double FARTHEST_TAIL = 1e-20;

    /** An average worked out again, finer, where it turns out to lie far in a tail. */
    static double averaged(DoubleUnaryOperator forTail) {
        double average = forTail.applyAsDouble(1);
        return average < Measured.FAR_TAIL
                ? forTail.applyAsDouble(Math.max(average, FARTHEST_TAIL))
                : average;
    }

    /**
     * A share without uncertainty.
     *
     * @param share above 0 and at most 1
     */
    record Known(double share) implements DetectionShare {

        /** Checks the share. */
        public Known {
            Require.share("share", share);
        }

        @Override
        public double mean() {
            return share;
        }

        @Override
        public double varianceOfLog() {
            return 0;
        }

        @Override
        public double average(DoubleUnaryOperator ofShare) {
            return ofShare.applyAsDouble(share);
        }
    }

    /**
     * A share with a Beta(found + ½, outOf − found + ½) distribution: what the measurement leaves
     * open, starting from Jeffreys' prior.
     *
     * @param found individuals found again, 0 to {@code outOf}
     * @param outOf individuals there were, 1 or more
     */
    record Measured(long found, long outOf) implements DetectionShare {

        /** Narrowest feature of a curve like e^(−x), as ln x grows. */
        static final double FINEST = 0.5;

        private static final double FAR_TAIL = 1e-3;

        /** Checks both numbers. */
        public Measured {
            Require.atLeast("outOf", outOf, 1);
            if (!(found >= 0 && found <= outOf)) {
                throw new InvalidInput(
                        ("found is %d of %d; it must be 0 to %d."
                                        + " Maybe the two numbers are the wrong way round.")
                                .formatted(found, outOf, outOf));
            }
        }

        /** {@return first shape of the Beta distribution} */
        public double foundShape() {
            return found + 0.5;
        }

        /** {@return second shape of the Beta distribution} */
        public double missedShape() {
            return outOf - found + 0.5;
        }

        @Override
        public double mean() {
            return foundShape() / (outOf + 1.0);
        }

        /** {@return the expected value of its natural logarithm} */
        double meanOfLog() {
            return Gamma.digamma(foundShape()) - Gamma.digamma(outOf + 1.0);
        }

        @Override
        public double varianceOfLog() {
            return Gamma.trigamma(foundShape()) - Gamma.trigamma(outOf + 1.0);
        }

        @Override
        public double average(DoubleUnaryOperator ofShare) {
            return averaged(
                    tail ->
                            BetaNodes.of(foundShape(), missedShape(), FINEST, tail)
                                    .average(v -> ofShare.applyAsDouble(Math.exp(v))));
        }
    }
}
