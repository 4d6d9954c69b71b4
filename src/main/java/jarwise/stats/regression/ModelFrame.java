package jarwise.stats.regression;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts with what they may depend on, ready to be fitted.
 *
 * <p>Rows that share design and exposure are put together as they come in, so that a fit costs as
 * much as there are different rows.
 */
public final class ModelFrame {

    private final List<Coefficient> coefficients;
    private final Design design;

    private ModelFrame(List<Coefficient> coefficients, Design design) {
        this.coefficients = List.copyOf(coefficients);
        this.design = design;
    }

    /**
     * Takes many rows at once, each a sample of its own.
     *
     * @param coefficients what each value of a design row stands for
     * @param rows row after row, each with one finite value a coefficient
     * @param exposure sampling units times share of the filter read, above 0, for each row
     * @param counts individuals of each row, 0 or more
     * @return the frame
     * @throws InvalidInput if the arrays do not fit together or hold what is out of range
     */
    public static ModelFrame ofRows(
            List<Coefficient> coefficients, double[] rows, double[] exposure, long[] counts) {
        int p = coefficients.size();
        boolean fits = rows.length == (long) p * counts.length && exposure.length == counts.length;
        if (p == 0
                || !fits
                || !Arrays.stream(rows).allMatch(Double::isFinite)
                || !Arrays.stream(exposure).allMatch(e -> e > 0 && e < Double.POSITIVE_INFINITY)
                || !Arrays.stream(counts).allMatch(count -> count >= 0)) {
            throw new InvalidInput(
                    ("There are %d values of the design, %d exposures and %d counts for %d"
                         + " coefficients; each count needs a finite value a coefficient and an"
                         + " exposure above 0. Maybe one list is too short.")
                            .formatted(rows.length, exposure.length, counts.length, p));
        }
        return new ModelFrame(coefficients, new RowCells(p, rows, exposure, counts).design());
    }

    /** {@return what each column of the design stands for} */
    public List<Coefficient> coefficients() {
        return coefficients;
    }

    Design design() {
        return design;
    }

    /** {@return the frame without the columns of these coefficients} */
    public ModelFrame without(List<Coefficient> left) {
        int[] kept =
                java.util.stream.IntStream.range(0, coefficients.size())
                        .filter(j -> !left.contains(coefficients.get(j)))
                        .toArray();
        return new ModelFrame(
                Arrays.stream(kept).mapToObj(coefficients::get).toList(), design.withColumns(kept));
    }

    /** Puts rows together. */
    public static final class Builder {

        private final List<Coefficient> coefficients;
        private final Map<Key, double[]> cells = new LinkedHashMap<>();
        private final Map<Long, Double> counts = new HashMap<>();

        /** The design row and the exposure of a cell; its text decides its place. */
        private record Key(List<Double> row, double exposure) {}

        /**
         * Begins a frame.
         *
         * @param coefficients what each value of a design row stands for; at least one
         */
        public Builder(List<Coefficient> coefficients) {
            Require.atLeast("coefficients", coefficients.size(), 1);
            this.coefficients = List.copyOf(coefficients);
        }

        /**
         * Adds a count.
         *
         * @param row one finite value a coefficient
         * @param exposure sampling units times share of the filter read, above 0
         * @param individuals the count, 0 or more
         * @param frequency for how many such samples it stands, above 0
         * @return this builder
         * @throws InvalidInput if a value is out of its range
         */
        public Builder add(double[] row, double exposure, long individuals, double frequency) {
            Require.positive("exposure", exposure);
            Require.positive("frequency", frequency);
            Require.atLeast("individuals", individuals, 0);
            if (row.length != coefficients.size()
                    || !Arrays.stream(row).allMatch(Double::isFinite)) {
                throw new InvalidInput(
                        ("A row of the design is %s; it must hold %d finite numbers. Maybe a"
                                        + " column is empty.")
                                .formatted(Arrays.toString(row), coefficients.size()));
            }
            Key key = new Key(Arrays.stream(row).map(x -> x + 0.0).boxed().toList(), exposure);
            double[] cell = cells.computeIfAbsent(key, fresh -> new double[2]);
            cell[0] += frequency;
            cell[1] += frequency * individuals;
            counts.merge(individuals, frequency, Double::sum);
            return this;
        }

        /** {@return the frame; the order in which rows came makes no difference} */
        public ModelFrame build() {
            List<Map.Entry<Key, double[]>> sorted = new ArrayList<>(cells.entrySet());
            sorted.sort(Map.Entry.comparingByKey(Builder::compared));
            int p = coefficients.size();
            int n = sorted.size();
            double[] rows = new double[n * p];
            double[] offset = new double[n];
            double[] samples = new double[n];
            double[] individuals = new double[n];
            for (int cell = 0; cell < n; cell++) {
                Key key = sorted.get(cell).getKey();
                for (int j = 0; j < p; j++) {
                    rows[cell * p + j] = key.row().get(j);
                }
                offset[cell] = Math.log(key.exposure());
                samples[cell] = sorted.get(cell).getValue()[0];
                individuals[cell] = sorted.get(cell).getValue()[1];
            }
            return new ModelFrame(
                    coefficients,
                    new Design(p, rows, offset, samples, individuals, new CountHistogram(counts)));
        }

        private static int compared(Key one, Key other) {
            for (int j = 0; j < one.row().size(); j++) {
                int by = Double.compare(one.row().get(j), other.row().get(j));
                if (by != 0) {
                    return by;
                }
            }
            return Double.compare(one.exposure(), other.exposure());
        }
    }
}
