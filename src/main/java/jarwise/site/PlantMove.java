package jarwise.site;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.LocalDate;

/**
 * Plants carried from one bench to another, and what hides in them with them.
 *
 * @param movedOn day, in the nursery's time zone
 * @param fromBench where they stood
 * @param toBench where they stand now
 * @param cropLot their lot
 * @param plants how many, 1 or more
 */
public record PlantMove(
        LocalDate movedOn, String fromBench, String toBench, String cropLot, int plants) {

    public PlantMove {
        Require.notBlank("bench", fromBench);
        Require.notBlank("bench", toBench);
        Require.atLeast("plants", plants, 1);
        if (fromBench.equals(toBench)) {
            throw new InvalidInput(
                    "Plants move from %s to %s; two benches are needed."
                            .formatted(fromBench, toBench));
        }
    }
}
