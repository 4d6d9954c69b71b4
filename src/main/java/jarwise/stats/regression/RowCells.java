package jarwise.stats.regression;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Puts many rows of plain numbers together in cells. Where hardly two of the first rows are the
 * same, as with a covariate, each row is a cell of its own and nothing is searched.
 */
final class RowCells {

    private static final int TRIED = 4096;
    private static final int SMALL_COUNTS = 4096;

    private final int columns;
    private final double[] rows;
    private final double[] exposure;
    private final long[] counts;
    private final int[] cellOfRow;
    private int cells;

    RowCells(int columns, double[] rows, double[] exposure, long[] counts) {
        this.columns = columns;
        this.rows = rows;
        this.exposure = exposure;
        this.counts = counts;
        this.cellOfRow = new int[counts.length];
    }

    Design design() {
        int tried = Math.min(TRIED, counts.length);
        findCells(tried);
        if (cells > tried / 2 && counts.length > tried) {
            return asTheyAre();
        }
        findCells(counts.length);
        return gathered();
    }

    private Design asTheyAre() {
        double[] one = new double[counts.length];
        Arrays.fill(one, 1);
        return new Design(
                columns,
                rows.clone(),
                Arrays.stream(exposure).map(Math::log).toArray(),
                one,
                Arrays.stream(counts).asDoubleStream().toArray(),
                histogram());
    }

    /** Cells are numbered in the order in which they are met. */
    private void findCells(int number) {
        int size = Integer.highestOneBit(Math.max(16, number)) * 4;
        int[] firstRow = new int[size];
        Arrays.fill(firstRow, -1);
        cells = 0;
        for (int row = 0; row < number; row++) {
            int slot = hash(row) & (size - 1);
            while (firstRow[slot] >= 0 && !same(firstRow[slot], row)) {
                slot = (slot + 1) & (size - 1);
            }
            if (firstRow[slot] < 0) {
                firstRow[slot] = row;
                cellOfRow[row] = cells++;
            } else {
                cellOfRow[row] = cellOfRow[firstRow[slot]];
            }
        }
    }

    private int hash(int row) {
        long hash = Double.doubleToRawLongBits(exposure[row]);
        for (int j = row * columns; j < (row + 1) * columns; j++) {
            hash = hash * 0x9E3779B97F4A7C15L + Double.doubleToRawLongBits(rows[j]);
        }
        hash ^= hash >>> 32;
        return (int) ((hash * 0x9E3779B97F4A7C15L) >>> 33);
    }

    private boolean same(int one, int other) {
        int first = one * columns;
        int second = other * columns;
        return exposure[one] == exposure[other]
                && Arrays.equals(rows, first, first + columns, rows, second, second + columns);
    }

    private Design gathered() {
        double[] design = new double[cells * columns];
        double[] offset = new double[cells];
        double[] samples = new double[cells];
        double[] individuals = new double[cells];
        for (int row = 0; row < counts.length; row++) {
            int cell = cellOfRow[row];
            if (samples[cell]++ == 0) {
                System.arraycopy(rows, row * columns, design, cell * columns, columns);
                offset[cell] = Math.log(exposure[row]);
            }
            individuals[cell] += counts[row];
        }
        return new Design(columns, design, offset, samples, individuals, histogram());
    }

    private CountHistogram histogram() {
        double[] small = new double[SMALL_COUNTS];
        Map<Long, Double> frequencies = new HashMap<>();
        for (long count : counts) {
            if (count < SMALL_COUNTS) {
                small[(int) count]++;
            } else {
                frequencies.merge(count, 1.0, Double::sum);
            }
        }
        for (int count = 0; count < SMALL_COUNTS; count++) {
            if (small[count] > 0) {
                frequencies.put((long) count, small[count]);
            }
        }
        return new CountHistogram(frequencies);
    }
}
