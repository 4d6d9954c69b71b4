package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.LongStream;

/**
 * Which finds it sooner: wash, tap, card or visual?
 *
 * <p>The chance of at least one find by number of samples, several methods side by side. A number
 * of taps is not a number of jars: what a sample costs is for the reader to weigh.
 *
 * @param curves method and its curve, in the order in which they are shown, at least 1
 */
public record DetectionCurves(Map<String, DetectionCurve> curves) {

    /**
     * One number of samples.
     *
     * @param sampleSize samples
     * @param probabilities method and its chance of at least one find, in order
     */
    public record Row(long sampleSize, Map<String, Double> probabilities) {

        /** Keeps the map from being changed. */
        public Row {
            probabilities = Collections.unmodifiableMap(new LinkedHashMap<>(probabilities));
        }
    }

    /** Checks that there is a curve and keeps the map from being changed. */
    public DetectionCurves {
        if (curves.isEmpty()) {
            throw new InvalidInput("There is no method to compare; at least 1 is needed.");
        }
        curves = Collections.unmodifiableMap(new LinkedHashMap<>(curves));
    }

    /**
     * The chances at some numbers of samples.
     *
     * @param sampleSizes numbers of samples, 0 or more each and within what each curve allows
     * @return a row for each, in that order
     * @throws InvalidInput if a number is out of range
     */
    public List<Row> at(LongStream sampleSizes) {
        List<Row> rows = new ArrayList<>();
        for (long sampleSize : sampleSizes.toArray()) {
            Map<String, Double> chances = new LinkedHashMap<>();
            curves.forEach((name, curve) -> chances.put(name, curve.probability(sampleSize)));
            rows.add(new Row(sampleSize, chances));
        }
        return rows;
    }

    /**
     * How many samples each method needs.
     *
     * @param confidenceLevel wanted chance of at least one find, in (0, 1)
     * @return method and its number of samples, in order; empty where no number does it
     * @throws InvalidInput if the level is outside (0, 1)
     */
    public Map<String, OptionalLong> sampleSizes(double confidenceLevel) {
        Map<String, OptionalLong> sizes = new LinkedHashMap<>();
        curves.forEach((name, curve) -> sizes.put(name, curve.sampleSize(confidenceLevel)));
        return Collections.unmodifiableMap(sizes);
    }
}
