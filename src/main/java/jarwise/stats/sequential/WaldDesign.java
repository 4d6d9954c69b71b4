package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Two classes of density to be told apart by Wald's sequential probability ratio test, and the
 * risks that are taken.
 *
 * <p>Stop below when the log-likelihood ratio of the upper against the lower density is at or under
 * ln(beta/(1 − alpha)), above when it is at or over ln((1 − beta)/alpha).
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i>, ch. 3 (from memory). Reference values:
 * {@code reference/sequential/stop-lines.csv}, {@code outcome.csv}.
 *
 * @param model counts or presence–absence
 * @param lowerDensity density classed as harmless, individuals per sampling unit, above 0; with
 *     presence–absence the proportion of samples at or over the tally threshold
 * @param upperDensity density classed as harmful, above {@code lowerDensity}
 * @param alpha wanted risk of "above" at {@code lowerDensity}, above 0 and below 0.5
 * @param beta wanted risk of "below" at {@code upperDensity}, above 0 and below 0.5
 * @param unitsPerSample sampling units in a sample, above 0; 1 with presence–absence
 */
public record WaldDesign(
        SampleModel model,
        double lowerDensity,
        double upperDensity,
        double alpha,
        double beta,
        double unitsPerSample) {

    /** Checks the design; throws {@link InvalidInput} naming what is out of range. */
    public WaldDesign {
        Require.positive("low density", lowerDensity);
        Require.positive("high density", upperDensity);
        if (!(lowerDensity < upperDensity)) {
            throw new InvalidInput(
                    ("the low density is %s and the high density %s; the low one must be below the"
                                    + " high one. Maybe they are the wrong way round.")
                            .formatted(lowerDensity, upperDensity));
        }
        requireRisk("alpha", alpha);
        requireRisk("beta", beta);
        Require.positive("sampling units in a sample", unitsPerSample);
        if (model instanceof PresenceAbsence) {
            requirePresence(lowerDensity, upperDensity, unitsPerSample);
        }
        model.requireMean("high density", unitsPerSample * upperDensity);
    }

    private static void requireRisk(String name, double risk) {
        if (!(risk >= 1e-12 && risk < 0.5)) {
            String maybe = risk >= 0.5 && risk < 1 ? String.valueOf(1 - risk) : "0.1";
            throw new InvalidInput(
                    "%s is %s; a risk above 0 and below 0.5 is allowed. Maybe %s."
                            .formatted(name, risk, maybe));
        }
    }

    private static void requirePresence(double lower, double upper, double units) {
        if (!(upper < 1)) {
            throw new InvalidInput(
                    ("the proportions are %s and %s; with presence-absence both must be above 0 and"
                                    + " below 1. Maybe they are meant in per cent.")
                            .formatted(lower, upper));
        }
        if (units != 1) {
            throw new InvalidInput(
                    ("sampling units in a sample is %s; with presence-absence the densities are"
                                    + " proportions of samples. Maybe leave the units out.")
                            .formatted(units));
        }
    }

    /** {@return mean per sample of the lower class} */
    public double lowerMean() {
        return unitsPerSample * lowerDensity;
    }

    /** {@return mean per sample of the upper class} */
    public double upperMean() {
        return unitsPerSample * upperDensity;
    }

    /** {@return log-likelihood ratio at or under which sampling stops below; under 0} */
    public double lowerLimit() {
        return Math.log(beta / (1 - alpha));
    }

    /** {@return log-likelihood ratio at or over which sampling stops above; over 0} */
    public double upperLimit() {
        return Math.log((1 - beta) / alpha);
    }

    /** {@return log-likelihood ratio of one individual in a sample as planned; above 0} */
    public double evidencePerIndividual() {
        return model.evidencePerIndividual(lowerMean(), upperMean());
    }

    /** {@return slope of both stop lines, individuals a sample} */
    public double slope() {
        return model.evidencePerSample(lowerMean(), upperMean()) / evidencePerIndividual();
    }

    /** {@return intercept of the lower stop line, individuals; below 0} */
    public double lowerIntercept() {
        return lowerLimit() / evidencePerIndividual();
    }

    /** {@return intercept of the upper stop line, individuals; above 0} */
    public double upperIntercept() {
        return upperLimit() / evidencePerIndividual();
    }

    /**
     * Log-likelihood ratio of one sample, of any number of sampling units.
     *
     * @param individuals individuals counted; with presence–absence 1 or 0
     * @param exposure sampling units times the share of the filter read
     * @return positive if it speaks for the upper density
     */
    public double logLikelihoodRatio(long individuals, double exposure) {
        double scale = model instanceof PresenceAbsence ? 1 : exposure;
        double lower = scale * lowerDensity;
        double upper = scale * upperDensity;
        return individuals * model.evidencePerIndividual(lower, upper)
                - model.evidencePerSample(lower, upper);
    }
}
