package jarwise.stats.detect;

import jarwise.stats.estimate.DetectionShare;
import org.hipparchus.special.Beta;

/** The chance that not one of so many infested units is recognised when it is looked at. */
final class MissedUnits {

    private MissedUnits() {}

    /**
     * (1 − E)^j where the efficacy E of detection is known; its average over the Beta distribution
     * of E, B(a, b + j) / B(a, b), where it was measured.
     */
    static double all(DetectionShare efficacy, double units) {
        if (units == 0) {
            return 1;
        }
        if (efficacy instanceof DetectionShare.Measured measured) {
            return betaMoment(measured.foundShape(), measured.missedShape(), units);
        }
        return Math.exp(units * Math.log1p(-efficacy.mean()));
    }

    /** The mean of (1 − q)^j over Beta(a, b). */
    static double betaMoment(double a, double b, double j) {
        return Math.exp(Beta.logBeta(a, b + j) - Beta.logBeta(a, b));
    }
}
