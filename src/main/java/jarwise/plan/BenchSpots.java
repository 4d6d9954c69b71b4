package jarwise.plan;

import jarwise.base.Require;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Draws places on a bench by lot. The bench is cut into a grid of equal pieces; each jar gets the
 * middle of another piece, every piece equally likely, by the first steps of a shuffle. The same
 * seed and bench give the same places, whatever other benches are in the round.
 */
public final class BenchSpots {

    private static final int ACROSS = 5;
    private static final int LEAST_ALONG = 20;

    private BenchSpots() {}

    /**
     * Draws.
     *
     * @param bench code of the bench
     * @param jars how many places, 0 or more
     * @param seed of the round
     * @return places no two alike, in the order along the bench
     */
    public static List<Spot> draw(String bench, int jars, long seed) {
        Require.atLeast("jars on " + bench, jars, 0);
        int along = Math.max(LEAST_ALONG, (2 * jars + ACROSS - 1) / ACROSS);
        SeededRandom random = new SeededRandom(seed ^ nameOf(bench));
        Map<Integer, Integer> moved = new HashMap<>();
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < jars; i++) {
            int j = i + random.below(along * ACROSS - i);
            int piece = moved.getOrDefault(j, j);
            moved.put(j, moved.getOrDefault(i, i));
            int column = piece / ACROSS;
            int row = piece - column * ACROSS;
            spots.add(new Spot((column + 0.5) / along, (row + 0.5) / ACROSS));
        }
        spots.sort(Comparator.comparingDouble(Spot::along).thenComparingDouble(Spot::across));
        return spots;
    }

    /** A number for the name, far apart for names that are alike. */
    private static long nameOf(String bench) {
        long name = 0;
        for (int i = 0; i < bench.length(); i++) {
            name = (name ^ bench.charAt(i)) * 0x9E3779B97F4A7C15L;
            name ^= name >>> 29;
        }
        return name;
    }
}
