package jarwise.stats.estimate;

import jarwise.numeric.PanelFunction;
import jarwise.numeric.PeakPanels;
import jarwise.stats.count.CountFit;

/**
 * The distribution that the default interval is read from: likelihood integrated over k (and over
 * what is open about efficiency and sensitivity), times density^(−3/4), up to the largest density
 * considered.
 *
 * <p>Kept on the scale t = ln density, where the weight is e^(t/4). Corrected for detection, t is
 * the counted ln density minus ln of the share counted, so each measured share is one more
 * averaging.
 */
final class IntegratedDensity {

    private static final double WEIGHT_EXPONENT = 0.25; // of density^(−3/4) times density

    private final PanelFunction posterior;
    private final double shift;

    private IntegratedDensity(PanelFunction posterior, double shift) {
        this.posterior = posterior;
        this.shift = shift;
    }

    /**
     * Works the distribution out.
     *
     * @param likelihood samples with at least one find, over the values of k
     * @param fit their most likely density and k
     * @param detection share counted
     * @param logLargest ln of the largest density considered, on the corrected scale
     * @param tail smallest share that a quantile is wanted for
     */
    static IntegratedDensity of(
            MixedLikelihood likelihood,
            CountFit fit,
            Detection detection,
            double logLargest,
            double tail) {
        double shift = -detection.logOfKnown();
        double end = logLargest - shift;
        PanelFunction result =
                PeakPanels.of(
                        t -> likelihood.log(t) + WEIGHT_EXPONENT * t,
                        Math.log(fit.density()),
                        Math.min(fit.standardErrorOfLog().orElse(1), 1 / WEIGHT_EXPONENT),
                        end,
                        tail);
        double fifth = 0.2 * result.integral();
        double finest = 0.5 * (result.inverseIntegralFrom(fifth) - result.inverseIntegral(fifth));
        PanelFunction corrected = detection.averaged(result, -WEIGHT_EXPONENT, finest, end, tail);
        return new IntegratedDensity(corrected, shift);
    }

    /** {@return the density that this share of the distribution lies under} */
    double lower(double share) {
        return Math.exp(posterior.inverseIntegral(share * posterior.integral()) + shift);
    }

    /** {@return the density that this share of the distribution lies above} */
    double upper(double share) {
        return Math.exp(posterior.inverseIntegralFrom(share * posterior.integral()) + shift);
    }

    /** {@return the same if the distribution were cut off at this ln density} */
    double upperBelow(double logLargest, double share) {
        double beyond = posterior.integralFrom(logLargest - shift);
        double part = posterior.integralUpTo(logLargest - shift);
        return Math.exp(posterior.inverseIntegralFrom(beyond + share * part) + shift);
    }

    /** {@return the share of the distribution above a density} */
    double probabilityAbove(double density) {
        double below = posterior.integralUpTo(Math.log(density) - shift);
        // Rounding can leave a share of 1e-14 on the wrong side.
        return Math.min(1, Math.max(0, 1 - below / posterior.integral()));
    }
}
