package jarwise.stats.space;

import jarwise.base.InvalidInput;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Moran's I of a map, with a test by permutation.
 *
 * @param index I: above the expected if dense benches lie together, below if they alternate; empty
 *     where all benches are the same or none has a neighbour
 * @param expected what chance gives on average, −1 / (benches − 1); empty for one bench
 * @param pValue (b + 1) / (m + 1) with b of m permutations reaching I; empty without I
 */
public record MoranTest(OptionalDouble index, OptionalDouble expected, OptionalDouble pValue) {

    /** Differences below this share of the sum of squares are rounding. */
    private static final double ROUNDING = 1e-10;

    /**
     * Do dense benches lie beside dense ones?
     *
     * <pre>
     *   I = (benches / pairs) · Σ over pairs z_i z_j / Σ z²,  z the value less the mean
     * </pre>
     *
     * <p><b>Assumes</b> that without spread from bench to bench every arrangement of the values
     * over the benches is equally likely. Benches sampled with very different effort are not quite
     * exchangeable: a bench without a find is the higher the less was sampled on it. With few
     * benches no arrangement is rare, and p cannot be small.
     *
     * <p><b>Source.</b> Moran (1950), <i>Biometrika</i> 37:17-23; test by permutation after Cliff
     * and Ord (1981), <i>Spatial Processes</i> (both from memory). Checked by our own arithmetic:
     * {@code reference/space/moran.csv} by hand, and by going through every permutation of small
     * maps in the tests.
     *
     * @param values one a bench, say {@link BenchCount#logDensity()}
     * @param neighbours neighbours of the same benches
     * @param permutations how the test is drawn
     * @return the test
     * @throws InvalidInput if the number of values is not that of the benches
     */
    public static MoranTest of(double[] values, Neighbours neighbours, Permutations permutations) {
        if (values.length != neighbours.benches()) {
            throw new InvalidInput(
                    "There are %d values for %d benches; one for each is needed."
                            .formatted(values.length, neighbours.benches()));
        }
        int n = values.length;
        OptionalDouble expected =
                n > 1 ? OptionalDouble.of(-1.0 / (n - 1)) : OptionalDouble.empty();
        double[] z = centred(values);
        double squares = Arrays.stream(z).map(v -> v * v).sum();
        double size = Arrays.stream(values).map(v -> v * v).sum();
        if (neighbours.pairs() == 0 || squares <= 1e-20 * size) {
            return new MoranTest(OptionalDouble.empty(), expected, OptionalDouble.empty());
        }
        double products = neighbours.products(z);
        double pValue =
                permutations.upperTail(z, neighbours::products, products - ROUNDING * squares);
        double index = n * products / (neighbours.pairs() * squares);
        return new MoranTest(OptionalDouble.of(index), expected, OptionalDouble.of(pValue));
    }

    private static double[] centred(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        return Arrays.stream(values).map(value -> value - mean).toArray();
    }
}
