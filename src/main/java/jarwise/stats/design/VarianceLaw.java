package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.GivenK;

/** How the variance of one sample's count goes with its mean. */
public sealed interface VarianceLaw {

    /**
     * Variance of one sample's count over the square of its mean.
     *
     * @param meanPerSample mean count per sample, above 0
     * @return above 0
     * @throws InvalidInput if the mean is not above 0, or the law gives no variance there
     */
    double relativeVariance(double meanPerSample);

    /**
     * Negative binomial: variance = m + m²/k, so that variance/m² = 1/m + 1/k; Poisson where k is
     * infinite.
     *
     * @param k dispersion of one sample, in the range of {@link GivenK}; may be infinite
     */
    record NegativeBinomial(double k) implements VarianceLaw {

        /** Checks k. */
        public NegativeBinomial {
            GivenK.require(k);
        }

        @Override
        public double relativeVariance(double meanPerSample) {
            return 1 / Require.positive("mean of a sample", meanPerSample) + 1 / k;
        }
    }

    /**
     * Taylor's power law: variance = a · m^b, so that variance/m² = a · m^(b − 2).
     *
     * @param a above 0
     * @param b any number; 1 to 2 is usual
     */
    record Taylor(double a, double b) implements VarianceLaw {

        /** Checks both constants. */
        public Taylor {
            Require.positive("Taylor's a", a);
            Require.between("Taylor's b", b, -10, 10);
        }

        @Override
        public double relativeVariance(double meanPerSample) {
            double mean = Require.positive("mean of a sample", meanPerSample);
            return Require.positive("Taylor's variance over mean²", a * Math.pow(mean, b - 2));
        }
    }

    /**
     * Iwao's line: mean crowding = α + β · m, so that variance/m² = (α + 1)/m + β − 1.
     *
     * @param alpha −1 or more
     * @param beta above 0
     */
    record Iwao(double alpha, double beta) implements VarianceLaw {

        /** Checks both constants. */
        public Iwao {
            if (!(alpha >= -1 && alpha < Double.POSITIVE_INFINITY)) {
                throw new InvalidInput(
                        "Iwao's alpha is %s; it must be -1 or more.".formatted(alpha));
            }
            Require.positive("Iwao's beta", beta);
        }

        @Override
        public double relativeVariance(double meanPerSample) {
            double mean = Require.positive("mean of a sample", meanPerSample);
            double ratio = (alpha + 1) / mean + beta - 1;
            if (ratio > 0 && ratio < Double.POSITIVE_INFINITY) {
                return ratio;
            }
            throw new InvalidInput(
                    ("Iwao's line with alpha %s and beta %s gives a variance of 0 or below for a"
                         + " mean of %s per sample; it must be above 0. Maybe the density is"
                         + " outside the range in which the line was fitted.")
                            .formatted(alpha, beta, meanPerSample));
        }
    }

    /**
     * Presence or absence: a sample counts 1 if it is at or over the tally threshold, so that the
     * mean is the proportion of such samples p and variance/p² = (1 − p)/p.
     */
    record Presence() implements VarianceLaw {

        @Override
        public double relativeVariance(double meanPerSample) {
            double p = Require.between("proportion of samples", meanPerSample, 0, 1);
            return (1 - p) / p;
        }
    }
}
