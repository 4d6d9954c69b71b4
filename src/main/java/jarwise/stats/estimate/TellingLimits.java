package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * When the chance of being above the action threshold tells something: a setting of the site.
 *
 * @param below at or under this chance the density counts as below the line; in (0, 1)
 * @param above at or over this chance it counts as above; in (0, 1) and over {@code below}
 * @param mostSamples the most further samples worth thinking about, 1 or more
 */
public record TellingLimits(double below, double above, int mostSamples) {

    /** Checks the settings; throws {@link InvalidInput} naming the first one out of range. */
    public TellingLimits {
        Require.between("below", below, 0, 1);
        Require.between("above", above, 0, 1);
        Require.atLeast("mostSamples", mostSamples, 1);
        if (!(below < above)) {
            throw new InvalidInput(
                    "below is %s; it must be less than above, %s.".formatted(below, above));
        }
    }

    /** {@return 5 % and 95 %, up to 200 further samples} */
    public static TellingLimits standard() {
        return new TellingLimits(0.05, 0.95, 200);
    }

    /**
     * Whether a chance tells.
     *
     * @param probabilityAboveThreshold chance that the density is above the action threshold
     * @return true at or beyond one of the two limits
     */
    public boolean tells(double probabilityAboveThreshold) {
        return probabilityAboveThreshold <= below || probabilityAboveThreshold >= above;
    }
}
