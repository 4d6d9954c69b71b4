package jarwise.stats;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Samples for tests: written out, or drawn from a seed. */
public final class Samples {

    private Samples() {}

    /** Reads {@code count[/units][xfrequency]}, separated by blanks. */
    public static Map<Observation, Long> frequencies(String text) {
        Map<Observation, Long> result =
                new TreeMap<>(
                        Comparator.comparingDouble(Observation::samplingUnits)
                                .thenComparingLong(Observation::individuals));
        for (String word : text.trim().split(" +", -1)) {
            String[] parts = word.split("x", -1);
            String[] count = parts[0].split("/", -1);
            double units = count.length > 1 ? Double.parseDouble(count[1]) : 1;
            result.merge(
                    Observation.of(Long.parseLong(count[0]), units),
                    parts.length > 1 ? Long.parseLong(parts[1]) : 1L,
                    Long::sum);
        }
        return result;
    }

    public static List<Observation> list(String text) {
        List<Observation> result = new ArrayList<>();
        frequencies(text)
                .forEach(
                        (observation, times) -> {
                            for (long i = 0; i < times; i++) {
                                result.add(observation);
                            }
                        });
        return result;
    }

    public static List<Observation> drawn(
            SeededRandom random, int jars, double units, NegativeBinomial perJar) {
        List<Observation> result = new ArrayList<>();
        for (int i = 0; i < jars; i++) {
            result.add(Observation.of(random.count(perJar), units));
        }
        return result;
    }
}
