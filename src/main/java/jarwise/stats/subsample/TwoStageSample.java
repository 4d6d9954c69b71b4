package jarwise.stats.subsample;

import jarwise.base.Require;
import java.util.Arrays;
import java.util.List;

/**
 * How many are there in all, if some units of some clusters were counted: some plants of some
 * benches, some squares of some filters?
 *
 * <p><b>Assumes</b> clusters drawn at random from N, units at random within each.
 *
 * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 11 (from memory). Reference
 * values: {@code reference/subsample/two-stage.csv}.
 *
 * @param clustersInAll clusters N, no fewer than were drawn
 * @param clusters the clusters drawn, 2 or more
 */
public record TwoStageSample(int clustersInAll, List<Cluster> clusters) {

    /**
     * One cluster that was drawn.
     *
     * @param units units in it M
     * @param counts individuals in each unit that was counted, 2 to M of them, 0 or more each
     */
    public record Cluster(int units, List<Double> counts) {

        /** Checks the numbers and keeps the list from being changed. */
        public Cluster {
            counts = List.copyOf(counts);
            Require.atLeast("counted units", counts.size(), 2);
            Require.atLeast("units left in the cluster", (long) units - counts.size(), 0);
            counts.forEach(count -> Require.notNegative("count", count));
        }

        double total() {
            return units * counts.stream().mapToDouble(c -> c).average().orElseThrow();
        }

        /** M² (1 − m/M) s² / m. */
        double withinVariance() {
            double[] values = counts.stream().mapToDouble(c -> c).toArray();
            double m = values.length;
            return units * (units - m) * variance(values, total() / units) / m;
        }
    }

    /** Checks the numbers and keeps the list from being changed. */
    public TwoStageSample {
        clusters = List.copyOf(clusters);
        Require.atLeast("clusters drawn", clusters.size(), 2);
        Require.atLeast("clusters left", (long) clustersInAll - clusters.size(), 0);
    }

    /** Variance around a value, divisor n − 1. */
    static double variance(double[] values, double around) {
        return Arrays.stream(values).map(x -> (x - around) * (x - around)).sum()
                / (values.length - 1.0);
    }

    /**
     * The total over all clusters.
     *
     * <pre>
     *   total    = (N/n) Σ M ȳ
     *   variance = N² (1 − n/N) s²(M ȳ) / n + (N/n) Σ M² (1 − m/M) s² / m
     * </pre>
     *
     * @return total with standard error
     */
    public TwoStageTotal total() {
        double n = clusters.size();
        double[] totals = clusters.stream().mapToDouble(Cluster::total).toArray();
        double mean = Arrays.stream(totals).average().orElseThrow();
        double between = clustersInAll * (clustersInAll - n) * variance(totals, mean) / n;
        return new TwoStageTotal(
                clustersInAll * mean, Math.sqrt(between + clustersInAll / n * within()));
    }

    /**
     * The mean per unit, by the ratio of totals to units.
     *
     * <pre>
     *   R        = Σ M ȳ / Σ M
     *   variance = (1 − n/N) / (n M̄²) · Σ (M ȳ − R M)² / (n − 1)
     *            + Σ M² (1 − m/M) s² / m / (n N M̄²)
     * </pre>
     *
     * <p>M̄ is the mean of the clusters drawn. Better than {@link #total()} over all units where
     * clusters differ in size; with a small bias of the order 1/n.
     *
     * @return mean per unit with standard error
     */
    public TwoStageTotal meanPerUnit() {
        double n = clusters.size();
        double units = clusters.stream().mapToDouble(Cluster::units).sum();
        double ratio = clusters.stream().mapToDouble(Cluster::total).sum() / units;
        double[] residuals =
                clusters.stream().mapToDouble(c -> c.total() - ratio * c.units()).toArray();
        double meanUnits = units / n;
        double between = (1 - n / clustersInAll) / n * variance(residuals, 0);
        double variance = (between + within() / (n * clustersInAll)) / (meanUnits * meanUnits);
        return new TwoStageTotal(ratio, Math.sqrt(variance));
    }

    private double within() {
        return clusters.stream().mapToDouble(Cluster::withinVariance).sum();
    }
}
