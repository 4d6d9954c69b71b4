package jarwise.stats.strata;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.Observation;
import java.util.List;

/**
 * A part of the crop that was sampled on its own.
 *
 * @param name what people call it: a bay, a variety
 * @param samplingUnitsStanding sampling units that stand in it: plants times growing points per
 *     plant; above 0 and no fewer than were sampled
 * @param observations its random samples, at least 1; targeted samples never enter a mean
 */
public record Stratum(String name, double samplingUnitsStanding, List<Observation> observations) {

    /** Checks the numbers and keeps the list from being changed. */
    public Stratum {
        Require.notBlank("name", name);
        Require.positive("samplingUnitsStanding", samplingUnitsStanding);
        observations = List.copyOf(observations);
        if (observations.isEmpty()) {
            throw new InvalidInput(
                    "%s has no sample; every stratum needs at least 1.".formatted(name));
        }
        double sampled = sum(observations);
        if (!(sampled <= samplingUnitsStanding)) {
            throw new InvalidInput(
                    ("%s has %s sampling units standing and %s sampled; no more can be sampled than"
                                    + " stand there. Maybe plants were given, not growing points.")
                            .formatted(name, samplingUnitsStanding, sampled));
        }
    }

    /** {@return share of what stands in it that was sampled, in (0, 1]} */
    public double sampledShare() {
        return sum(observations) / samplingUnitsStanding;
    }

    private static double sum(List<Observation> observations) {
        return observations.stream().mapToDouble(Observation::samplingUnits).sum();
    }
}
