package jarwise.stats.design;

import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * A part of the crop that is to be sampled on its own.
 *
 * @param name what people call it: a bay, a variety; no two alike in a plan
 * @param samplingUnitsStanding sampling units that stand in it, above 0
 * @param standardDeviation of the density per sample within it, 0 or more; empty if not known
 * @param costOfSample what a sample there costs, in any unit, above 0; 1 if all cost the same
 */
public record AllocatedStratum(
        String name,
        double samplingUnitsStanding,
        OptionalDouble standardDeviation,
        double costOfSample) {

    /** Checks the numbers. */
    public AllocatedStratum {
        Require.notBlank("name of a stratum", name);
        Require.positive("size of " + name, samplingUnitsStanding);
        if (standardDeviation.isPresent()) {
            Require.notNegative("standard deviation of " + name, standardDeviation.getAsDouble());
        }
        Require.positive("cost of a sample in " + name, costOfSample);
    }

    /** {@return a stratum of which only the size is known} */
    public static AllocatedStratum ofSize(String name, double samplingUnitsStanding) {
        return new AllocatedStratum(name, samplingUnitsStanding, OptionalDouble.empty(), 1);
    }
}
