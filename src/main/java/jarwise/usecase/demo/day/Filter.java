package jarwise.usecase.demo.day;

import jarwise.sample.Fill;
import jarwise.stats.count.SimulatedCounts;
import jarwise.usecase.demo.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A filter as it lies under the microscope: what truly is on it, whoever reads it.
 *
 * @param insects in the order in which they settled
 * @param obscured cells that cannot be read
 * @param muchDebris whether leaf hairs and dust make every cell slow to read
 */
record Filter(List<Insect> insects, Set<String> obscured, boolean muchDebris) {

    /** Shape of the gamma distribution by which jars of one bench differ. */
    private static final double JAR_SHAPE = 4;

    private static final double OBSCURED_SHARE = .002;
    private static final double OBSCURED_SHARE_DEBRIS = .04;

    /** One individual and the cell in which it lies. */
    record Insect(Stage stage, String cell) {}

    /** Washes a jar: growing points are drawn, what comes off them settles. */
    static Filter of(Jar jar, Codes codes) {
        List<Insect> insects = new ArrayList<>();
        Map<Stage, double[]> densities = new TreeMap<>(jar.stand().densities());
        // Stages of one pest share the jar: a rich corner is rich in all of them.
        Map<String, Double> richness = new TreeMap<>();
        for (Stage stage : densities.keySet()) {
            SimulatedCounts draws = codes.draws(jar.code(), "crop", stage);
            double rich =
                    richness.computeIfAbsent(
                            stage.pest(),
                            pest -> codes.draws(jar.code(), "richness", pest).gamma(JAR_SHAPE, 1));
            double mean = rich * jar.stand().density(stage, jar.round());
            double share = stage.observed().washed(jar.fluid(), jar.fill() == Fill.PACKED);
            for (int point = 0; point < jar.growingPoints(); point++) {
                settle(insects, stage, thinned(mean, stage.k(), share, draws), draws);
            }
        }
        return new Filter(insects, obscuredCells(jar, codes), jar.muchDebris());
    }

    private static long thinned(double mean, double k, double share, SimulatedCounts draws) {
        long there = mean > 0 ? draws.negativeBinomial(mean, k) : 0;
        long washedOff = 0;
        for (long i = 0; i < there; i++) {
            washedOff += draws.happens(share) ? 1 : 0;
        }
        return washedOff;
    }

    private static void settle(
            List<Insect> insects, Stage stage, long number, SimulatedCounts draws) {
        for (long i = 0; i < number; i++) {
            insects.add(new Insect(stage, FilterGrid.settle(draws)));
        }
    }

    private static Set<String> obscuredCells(Jar jar, Codes codes) {
        SimulatedCounts draws = codes.draws(jar.code(), "obscured");
        double share = jar.muchDebris() ? OBSCURED_SHARE_DEBRIS : OBSCURED_SHARE;
        Set<String> cells = new TreeSet<>();
        FilterGrid.WALK.stream().filter(cell -> draws.happens(share)).forEach(cells::add);
        if (PlantedFaults.tooWet(jar)) {
            cells.addAll(FilterGrid.WALK.subList(0, 7));
        }
        return cells;
    }

    /** A filter with a known number of each stage put on it. */
    static Filter seeded(Map<Stage, Integer> known, SimulatedCounts draws) {
        List<Insect> insects = new ArrayList<>();
        new TreeMap<>(known).forEach((stage, number) -> settle(insects, stage, number, draws));
        return new Filter(insects, Set.of(), false);
    }

    /** Known individuals put into a jar: what the wash brings off them again. */
    static Filter spiked(Jar jar, Stage stage, int known, SimulatedCounts draws) {
        List<Insect> insects = new ArrayList<>();
        double share = stage.observed().washed(jar.fluid(), false);
        for (int i = 0; i < known; i++) {
            if (draws.happens(share)) {
                settle(insects, stage, 1, draws);
            }
        }
        return new Filter(insects, Set.of(), false);
    }
}
