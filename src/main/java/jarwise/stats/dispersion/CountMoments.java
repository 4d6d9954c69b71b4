package jarwise.stats.dispersion;

import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sums of the counts of one group of samples. They are taken over distinct counts in rising order,
 * so the order of the samples does not change a digit.
 *
 * @param sampleSize number of samples
 * @param individuals sum of the counts
 * @param squaresAboutMean sum of the squared differences from the mean
 * @param pairs sum of count × (count − 1)
 * @param emptySamples samples without a find
 */
record CountMoments(
        long sampleSize,
        double individuals,
        double squaresAboutMean,
        double pairs,
        long emptySamples) {

    static CountMoments of(Collection<Observation> observations) {
        if (observations.isEmpty()) {
            throw new InvalidInput("There is no sample to judge by; at least 1 is needed.");
        }
        Observation first = observations.iterator().next();
        Map<Long, Long> samplesWith = new TreeMap<>();
        for (Observation observation : observations) {
            requireSameSize(first, observation);
            samplesWith.merge(observation.individuals(), 1L, Long::sum);
        }
        double individuals = 0;
        double pairs = 0;
        for (Map.Entry<Long, Long> entry : samplesWith.entrySet()) {
            double count = entry.getKey();
            individuals += entry.getValue() * count;
            pairs += entry.getValue() * count * (count - 1);
        }
        double mean = individuals / observations.size();
        double squares = 0;
        for (Map.Entry<Long, Long> entry : samplesWith.entrySet()) {
            squares += entry.getValue() * Math.pow(entry.getKey() - mean, 2);
        }
        long empty = samplesWith.getOrDefault(0L, 0L);
        return new CountMoments(observations.size(), individuals, squares, pairs, empty);
    }

    private static void requireSameSize(Observation first, Observation other) {
        if (first.samplingUnits() != other.samplingUnits()
                || first.filterShare() != other.filterShare()) {
            throw new InvalidInput(
                    ("One sample has %s sampling units with %s of the filter read, another %s with"
                                    + " %s; for indices of dispersion all samples must be the same"
                                    + " size. Maybe keep those of one size only.")
                            .formatted(
                                    first.samplingUnits(),
                                    first.filterShare(),
                                    other.samplingUnits(),
                                    other.filterShare()));
        }
    }

    double mean() {
        return individuals / sampleSize;
    }
}
