package jarwise.usecase.demo.day;

import jarwise.stats.count.SimulatedCounts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The round filter: 40 cells of 10 mm in rows A to G, walked in a snake. */
final class FilterGrid {

    /** All cells in the order of the walk: A3 to A6, B7 to B2, C2 to C7, D8 to D1 … */
    static final List<String> WALK = walk();

    private static final double CELL_MM = 10;

    /** Spread of what settles at the centre when the filter drains. */
    private static final double CENTRE_SPREAD_MM = 15;

    private FilterGrid() {}

    private static List<String> walk() {
        List<String> cells = new ArrayList<>();
        int[] lengths = {4, 6, 6, 8, 6, 6, 4};
        for (int row = 0; row < lengths.length; row++) {
            List<String> ofRow = new ArrayList<>();
            int first = (8 - lengths[row]) / 2 + 1;
            for (int column = first; column < first + lengths[row]; column++) {
                ofRow.add(name(row, column));
            }
            if (row % 2 == 1) {
                Collections.reverse(ofRow);
            }
            cells.addAll(ofRow);
        }
        return List.copyOf(cells);
    }

    private static String name(int row, int column) {
        return (char) ('A' + row) + Integer.toString(column);
    }

    /**
     * Lets an insect settle: 60 % anywhere, 40 % around the centre, so that the first rows alone
     * would be a biased sample.
     */
    static String settle(SimulatedCounts draws) {
        if (draws.happens(.6)) {
            return WALK.get(draws.below(WALK.size()));
        }
        while (true) {
            int column = (int) StrictMath.floor(draws.normal() * CENTRE_SPREAD_MM / CELL_MM) + 5;
            int row = (int) StrictMath.rint(draws.normal() * CENTRE_SPREAD_MM / CELL_MM) + 3;
            if (row >= 0 && row <= 6 && column >= 1 && column <= 8) {
                String cell = name(row, column);
                if (WALK.contains(cell)) {
                    return cell;
                }
            }
        }
    }
}
