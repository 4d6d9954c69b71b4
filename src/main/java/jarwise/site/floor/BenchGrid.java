package jarwise.site.floor;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Bays of a house with the benches in each. Bays lie side by side across the house, their benches
 * in a row along it, with paths between.
 *
 * @param benchesOfBay number of benches in each bay, in order; at least one bay, each with one
 */
public record BenchGrid(List<Integer> benchesOfBay) {

    /** More than anybody types in one sentence. */
    public static final int MOST_BENCHES = 1_000;

    private static final int MOST_BAYS = 100;
    private static final double WIDEST_PATH = 0.6;

    /** A path takes no more than this share of the room of a bench, on either side. */
    private static final double PATH_SHARE = 0.1;

    public BenchGrid {
        benchesOfBay = List.copyOf(benchesOfBay);
        Require.atLeast("bays", benchesOfBay.size(), 1);
        benchesOfBay.forEach(benches -> Require.atLeast("benches of a bay", benches, 1));
        long all = benchesOfBay.stream().mapToLong(Integer::longValue).sum();
        if (benchesOfBay.size() > MOST_BAYS || all > MOST_BENCHES) {
            throw new InvalidInput(
                    "These are %d benches in %d bays; %d benches in %d bays are allowed at once."
                            .formatted(all, benchesOfBay.size(), MOST_BENCHES, MOST_BAYS));
        }
    }

    /** {@return a number of bays with as many benches in each} */
    public static BenchGrid of(int bays, int benches) {
        return new BenchGrid(java.util.Collections.nCopies(bays, benches));
    }

    /** {@return how many benches there are} */
    public int benches() {
        return benchesOfBay.stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * Lays the benches out.
     *
     * @param length metres of the house along its bays, above 0
     * @param width metres of the house across its bays, above 0
     * @return for each bay its benches in order, in metres within the house; none overlap
     */
    public List<List<Rectangle>> places(double length, double width) {
        Require.positive("length of the house", length);
        Require.positive("width of the house", width);
        List<List<Rectangle>> bays = new ArrayList<>();
        double depth = width / benchesOfBay.size();
        for (int bay = 0; bay < benchesOfBay.size(); bay++) {
            int benches = benchesOfBay.get(bay);
            double room = length / benches;
            double beside = Math.min(WIDEST_PATH / 2, room * PATH_SHARE);
            double above = Math.min(WIDEST_PATH, depth * PATH_SHARE);
            List<Rectangle> row = new ArrayList<>();
            for (int i = 0; i < benches; i++) {
                row.add(
                        new Rectangle(
                                i * room + beside,
                                bay * depth + above,
                                room - 2 * beside,
                                depth - 2 * above));
            }
            bays.add(row);
        }
        return bays;
    }

    /** {@return the letters of a bay: A, B, … Z, AA, AB, …} */
    public static String letters(int bay) {
        return bay < 26
                ? String.valueOf((char) ('A' + bay))
                : letters(bay / 26 - 1) + (char) ('A' + bay % 26);
    }
}
