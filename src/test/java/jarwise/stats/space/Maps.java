package jarwise.stats.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Small maps for tests. */
final class Maps {

    private Maps() {}

    /** Reads {@code 1 0|0 1}: values of benches from left to right, row by row. */
    static double[] values(String map) {
        return Arrays.stream(map.split("[ |]", -1)).mapToDouble(Double::parseDouble).toArray();
    }

    /** The benches of a map, each with so many individuals as its value says, to the whole. */
    static List<BenchCount> benches(String map) {
        List<BenchCount> benches = new ArrayList<>();
        String[] rows = map.split("\\|", -1);
        for (int row = 0; row < rows.length; row++) {
            String[] cells = rows[row].split(" ", -1);
            for (int column = 0; column < cells.length; column++) {
                long individuals = Math.round(Double.parseDouble(cells[column]));
                String name = "r%dc%d".formatted(row, column);
                benches.add(new BenchCount("", name, column, row, individuals, 10));
            }
        }
        return benches;
    }

    /** Every order of 0 to n − 1. */
    static List<int[]> orders(int n) {
        List<int[]> orders = new ArrayList<>();
        extend(new int[n], 0, new boolean[n], orders);
        return orders;
    }

    private static void extend(int[] order, int filled, boolean[] used, List<int[]> orders) {
        if (filled == order.length) {
            orders.add(order.clone());
            return;
        }
        for (int i = 0; i < order.length; i++) {
            if (!used[i]) {
                used[i] = true;
                order[filled] = i;
                extend(order, filled + 1, used, orders);
                used[i] = false;
            }
        }
    }
}
