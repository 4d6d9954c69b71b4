package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which plants are sampled, and in which order are they walked to?
 *
 * @param stops plants in the order of the walk
 */
public record Placing(List<Stop> stops) {

    private static final Comparator<PlantStand> BY_PLACE =
            Comparator.comparing(PlantStand::house).thenComparing(PlantStand::bench);

    /**
     * One sample's plant.
     *
     * @param stratum the stratum it stands for
     * @param house the house to walk to
     * @param bench the bench in it
     * @param plant its number along the bench, from 1
     */
    public record Stop(String stratum, String house, String bench, int plant) {}

    /** Keeps the list from being changed. */
    public Placing {
        stops = List.copyOf(stops);
    }

    /**
     * Draws plants by lot.
     *
     * <p>In every stratum as many as are wanted, without replacement, every plant equally likely,
     * by the first steps of a shuffle. The walk goes through the houses from clean to dirty, so
     * that nothing is carried to where it is not; in a house along benches and plants. The same
     * seed and the same crop give the same plan in whatever order they are given.
     *
     * <p><b>Source.</b> Fisher and Yates' shuffle, Knuth (1997), <i>The Art of Computer
     * Programming</i>, vol. 2, sect. 3.4.2 (from memory).
     *
     * @param stands what stands in the crop
     * @param samples how many plants from which stratum, 0 or more and no more than stand there
     * @param lastDensity house and the density last found in it; a house that is not named counts
     *     as clean
     * @param seed any number
     * @return the plants
     * @throws InvalidInput if more are wanted of a stratum than stand there, or a stand is given
     *     twice
     */
    public static Placing of(
            List<PlantStand> stands,
            Map<String, Integer> samples,
            Map<String, Double> lastDensity,
            long seed) {
        Map<String, List<PlantStand>> strata = new TreeMap<>();
        samples.keySet().forEach(stratum -> strata.put(stratum, new ArrayList<>()));
        for (PlantStand stand : stands) {
            strata.computeIfAbsent(stand.stratum(), s -> new ArrayList<>()).add(stand);
        }
        SeededRandom random = new SeededRandom(seed);
        List<Stop> stops = new ArrayList<>();
        strata.forEach(
                (stratum, stood) ->
                        stops.addAll(
                                drawn(stratum, stood, samples.getOrDefault(stratum, 0), random)));
        stops.sort(
                Comparator.comparingDouble((Stop s) -> lastDensity.getOrDefault(s.house(), 0.0))
                        .thenComparing(Stop::house)
                        .thenComparing(Stop::bench)
                        .thenComparing(Stop::plant)
                        .thenComparing(Stop::stratum));
        return new Placing(stops);
    }

    private static List<Stop> drawn(
            String stratum, List<PlantStand> stood, int wanted, SeededRandom random) {
        stood.sort(BY_PLACE);
        if (stood.stream().map(s -> List.of(s.house(), s.bench())).distinct().count()
                < stood.size()) {
            throw new InvalidInput(
                    "%s names a bench twice; each must stand once.".formatted(stratum));
        }
        long standing = stood.stream().mapToLong(PlantStand::plants).sum();
        Require.atLeast("samples from " + stratum, wanted, 0);
        if (wanted > standing || standing > Integer.MAX_VALUE) {
            throw new InvalidInput(
                    "%d samples are wanted from %s, where %d plants stand; it must be 0 to %d."
                            .formatted(
                                    wanted,
                                    stratum,
                                    standing,
                                    Math.min(standing, Integer.MAX_VALUE)));
        }
        List<Stop> stops = new ArrayList<>();
        for (int number : numbers((int) standing, wanted, random)) {
            stops.add(stop(stood, number));
        }
        return stops;
    }

    /** The first steps of a shuffle of 0 … standing − 1, remembering only what was moved. */
    private static List<Integer> numbers(int standing, int wanted, SeededRandom random) {
        Map<Integer, Integer> moved = new HashMap<>();
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            int j = i + random.below(standing - i);
            numbers.add(moved.getOrDefault(j, j));
            moved.put(j, moved.getOrDefault(i, i));
        }
        return numbers;
    }

    private static Stop stop(List<PlantStand> stood, int number) {
        int left = number;
        for (PlantStand stand : stood) {
            if (left < stand.plants()) {
                return new Stop(stand.stratum(), stand.house(), stand.bench(), left + 1);
            }
            left -= stand.plants();
        }
        throw new IllegalStateException("plant " + number + " stands nowhere");
    }
}
