package jarwise.bench;

import jarwise.stats.count.SimulatedCounts;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.ModelFrame;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.RegressionFit;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Drawn rows for a regression with an intercept, five and three levels of two factors, and an
 * eighth coefficient.
 */
final class MillionRows {

    static final int COEFFICIENTS = 8;

    /** Growing points in every drawn sample. */
    private static final double UNITS = 10;

    private final double[] design;
    private final double[] exposure;
    private final long[] counts;

    /**
     * Draws the rows; the same every time.
     *
     * @param number of rows
     * @param covariate whether the eighth column is continuous; else it has two levels
     */
    MillionRows(int number, boolean covariate) {
        SimulatedCounts drawn = new SimulatedCounts(5);
        design = new double[number * COEFFICIENTS];
        exposure = new double[number];
        counts = new long[number];
        for (int row = 0; row < number; row++) {
            int at = row * COEFFICIENTS;
            design[at] = 1;
            int first = drawn.below(5);
            int second = drawn.below(3);
            if (first > 0) {
                design[at + first] = 1;
            }
            if (second > 0) {
                design[at + 4 + second] = 1;
            }
            design[at + 7] = covariate ? drawn.uniform() : drawn.below(2);
            exposure[row] = UNITS;
            double log = -1 + 0.2 * first - 0.3 * second + 0.5 * design[at + 7];
            counts[row] = drawn.negativeBinomial(UNITS * Math.exp(log), 0.8);
        }
    }

    RegressionFit fit() {
        List<Coefficient> coefficients =
                IntStream.range(0, COEFFICIENTS)
                        .mapToObj(j -> new Coefficient("x" + j, Optional.empty()))
                        .toList();
        return NegativeBinomialRegression.fit(
                ModelFrame.ofRows(coefficients, design, exposure, counts));
    }

    /** Writes the rows as a sheet with the columns count, x1 to x7. */
    void write(Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("count,x1,x2,x3,x4,x5,x6,x7\n");
            for (int row = 0; row < counts.length; row++) {
                StringBuilder line = new StringBuilder().append(counts[row]);
                for (int j = 1; j < COEFFICIENTS; j++) {
                    line.append(',').append(design[row * COEFFICIENTS + j]);
                }
                out.write(line.append('\n').toString());
            }
        }
    }
}
