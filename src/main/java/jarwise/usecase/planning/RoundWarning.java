package jarwise.usecase.planning;

import jarwise.treatment.Application;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Something that stands in the way of a round, before anything is cut. */
public sealed interface RoundWarning {

    /** {@return whether the round may not be registered as it is} */
    default boolean blocks() {
        return false;
    }

    /**
     * There is too little working time between the first and the last hour of reading.
     *
     * @param from when filters may be read
     * @param to by when they should be
     * @param minutesThere working minutes in between
     * @param minutesNeeded minutes that reading takes
     * @param instead the next day on which it fits
     */
    record NobodyReads(
            Instant from,
            Instant to,
            long minutesThere,
            long minutesNeeded,
            Optional<LocalDate> instead)
            implements RoundWarning {}

    /**
     * A re-entry interval runs when somebody would stand there.
     *
     * @param application which
     * @param stands stops inside it
     * @param excepted whether a named person answers for entering
     */
    record NoEntry(Application application, List<StandThere> stands, boolean excepted)
            implements RoundWarning {
        @Override
        public boolean blocks() {
            return !excepted;
        }
    }

    /** The site has said that these plants are not to be cut. */
    record NotToCut(List<StandThere> stands) implements RoundWarning {
        @Override
        public boolean blocks() {
            return true;
        }
    }

    /**
     * So few animals are on the untreated side that it says nothing.
     *
     * @param check the stand left untreated
     * @param expected individuals to be counted in all its jars before the treatment
     */
    record ThinCheck(StandThere check, double expected) implements RoundWarning {}

    /** Two varieties on two benches: what the bench does can't be told from what the plant does. */
    record VarietyIsBench(StandThere treated, StandThere check) implements RoundWarning {}

    /**
     * More filters than places in the freezer.
     *
     * @param places places in all
     * @param taken filters in it now
     * @param wanted filters of this round
     */
    record FreezerFull(int places, int taken, int wanted) implements RoundWarning {}

    /** Where growing points are not estimated everywhere, each stand counts the same. */
    record SizesUnknown(List<StandThere> stands) implements RoundWarning {}
}
