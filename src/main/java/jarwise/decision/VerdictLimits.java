package jarwise.decision;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * How sure a verdict must be: a setting of the site.
 *
 * @param below largest chance of being above the line that still counts as below it
 * @param above smallest chance of being above the line that counts as above it
 */
public record VerdictLimits(double below, double above) {

    /** 95 % sure on either side. */
    public static final VerdictLimits STANDARD = new VerdictLimits(0.05, 0.95);

    public VerdictLimits {
        Require.between("limit below", below, 0, 1);
        Require.between("limit above", above, 0, 1);
        if (!(below < above)) {
            throw new InvalidInput(
                    "limit below is %s; it must be less than limit above, %s"
                            .formatted(below, above));
        }
    }
}
