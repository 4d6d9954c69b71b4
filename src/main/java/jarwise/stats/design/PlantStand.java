package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Plants of one stratum that stand together.
 *
 * @param stratum the stratum they belong to
 * @param house the house they stand in
 * @param bench the bench, no two alike in a house and stratum
 * @param plants how many there are, numbered along the bench from 1; 1 to 1,000,000,000
 */
public record PlantStand(String stratum, String house, String bench, int plants) {

    private static final int MOST = 1_000_000_000;

    /** Checks the names and the number. */
    public PlantStand {
        Require.notBlank("stratum", stratum);
        Require.notBlank("house", house);
        Require.notBlank("bench", bench);
        if (!(plants >= 1 && plants <= MOST)) {
            throw new InvalidInput(
                    "plants on %s is %d; it must be 1 to %d.".formatted(bench, plants, MOST));
        }
    }
}
