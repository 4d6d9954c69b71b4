package jarwise.stats.regression;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Counts put together in cells that share their row of the design and their exposure: within a cell
 * only the number of samples and of individuals matter, apart from the histogram of counts.
 *
 * @param columns coefficients
 * @param rows design, cell after cell, each with one value a coefficient
 * @param offset natural logarithm of the exposure u·f of each cell
 * @param samples samples in each cell
 * @param individuals individuals in each cell
 * @param counts how often each count occurs
 */
@SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loops
record Design(
        int columns,
        double[] rows,
        double[] offset,
        double[] samples,
        double[] individuals,
        CountHistogram counts) {

    int cells() {
        return offset.length;
    }

    double allSamples() {
        return Arrays.stream(samples).sum();
    }

    double allIndividuals() {
        return Arrays.stream(individuals).sum();
    }

    /** {@return the design with other offsets and columns, of the same cells} */
    Design with(int otherColumns, double[] otherRows, double[] otherOffset) {
        return new Design(otherColumns, otherRows, otherOffset, samples, individuals, counts);
    }

    /**
     * One cell in so many, as a place to start from.
     *
     * @param step every how-manieth cell
     * @return them; empty where a cell holds several samples, whose single counts are not known
     */
    Optional<Design> part(int step) {
        int number = (cells() + step - 1) / step;
        double[] partRows = new double[number * columns];
        double[] partOffset = new double[number];
        double[] partIndividuals = new double[number];
        Map<Long, Double> frequencies = new HashMap<>();
        for (int i = 0; i < number; i++) {
            int cell = i * step;
            if (samples[cell] != 1) {
                return Optional.empty();
            }
            System.arraycopy(rows, cell * columns, partRows, i * columns, columns);
            partOffset[i] = offset[cell];
            partIndividuals[i] = individuals[cell];
            frequencies.merge((long) individuals[cell], 1.0, Double::sum);
        }
        double[] one = new double[number];
        Arrays.fill(one, 1);
        return Optional.of(
                new Design(
                        columns,
                        partRows,
                        partOffset,
                        one,
                        partIndividuals,
                        new CountHistogram(frequencies)));
    }

    /** {@return the squares and products of the columns, over the cells that are kept} */
    double[][] products(IntPredicate kept) {
        double[][] products = new double[columns][columns];
        for (int cell = 0; cell < cells(); cell++) {
            for (int i = 0; kept.test(cell) && i < columns; i++) {
                double x = rows[cell * columns + i];
                for (int j = 0; x != 0 && j < columns; j++) {
                    products[i][j] += x * rows[cell * columns + j];
                }
            }
        }
        return products;
    }

    /** {@return the design with these columns only, in this order} */
    Design withColumns(int[] wanted) {
        double[] kept = new double[cells() * wanted.length];
        for (int cell = 0; cell < cells(); cell++) {
            for (int j = 0; j < wanted.length; j++) {
                kept[cell * wanted.length + j] = rows[cell * columns + wanted[j]];
            }
        }
        return new Design(wanted.length, kept, offset, samples, individuals, counts);
    }

    /** {@return the sum of design row and coefficients of a cell, with its offset} */
    double logMean(int cell, double[] coefficients) {
        double sum = offset[cell];
        int at = cell * columns;
        for (double coefficient : coefficients) {
            sum += rows[at++] * coefficient;
        }
        return sum;
    }
}
