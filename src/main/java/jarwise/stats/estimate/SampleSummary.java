package jarwise.stats.estimate;

import jarwise.stats.count.Observation;
import java.util.List;

/**
 * What an estimate was made from.
 *
 * @param sampleSize number of samples (jars, taps, cards), J
 * @param samplingUnits sampling units in all of them, Σ u
 * @param individuals individuals counted in all of them
 * @param proportionPositive share of samples with at least one find, in [0, 1]
 */
public record SampleSummary(
        int sampleSize, double samplingUnits, long individuals, double proportionPositive) {

    static SampleSummary of(List<Observation> observations) {
        long individuals = 0;
        double units = 0;
        int positive = 0;
        for (Observation observation : observations) {
            individuals += observation.individuals();
            units += observation.samplingUnits();
            positive += observation.individuals() > 0 ? 1 : 0;
        }
        int sampleSize = observations.size();
        return new SampleSummary(sampleSize, units, individuals, (double) positive / sampleSize);
    }
}
