package jarwise.stats.space;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Whether benches with a first find lie beside benches that had one the round before.
 *
 * @param oldBenches benches with a find in the earlier round
 * @param couldTurn benches sampled in both rounds, without a find in the earlier one
 * @param newBenches those of them with a find in the later round
 * @param joins pairs of a new bench and an old one beside it
 * @param expected pairs if the new ones were anywhere among those that could turn; empty where none
 *     could
 * @param pValue (b + 1) / (m + 1) with b of m permutations reaching the joins; empty where every
 *     arrangement has as many
 */
public record NewNextToOld(
        int oldBenches,
        int couldTurn,
        int newBenches,
        int joins,
        OptionalDouble expected,
        OptionalDouble pValue) {

    /**
     * Does it spread from bench to bench?
     *
     * <p>Counts pairs of neighbours of which one is new and one old. Under chance the new ones are
     * any of those that could turn, each choice being equally likely; the old ones stay where they
     * are.
     *
     * <p><b>Assumes</b> that benches that could turn are alike but for their neighbours, and that a
     * find is a matter of density, not of effort. Plants that were moved break it.
     *
     * <p><b>Source.</b> Join counts: Cliff and Ord (1981), <i>Spatial Processes</i> (from memory);
     * this form of the test is our own. Checked in the tests by going through every choice.
     *
     * @param earlier counts of the round before, by bench
     * @param later counts of the later round, by bench
     * @param neighbours finds the neighbours of benches
     * @param permutations how the test is drawn
     * @return the test
     */
    public static NewNextToOld of(
            Map<String, BenchCount> earlier,
            Map<String, BenchCount> later,
            Function<List<BenchCount>, Neighbours> neighbours,
            Permutations permutations) {
        Map<String, BenchCount> all = new TreeMap<>(earlier);
        all.putAll(later);
        List<String> names = List.copyOf(all.keySet());
        boolean[] old = new boolean[names.size()];
        for (int i = 0; i < old.length; i++) {
            old[i] = isPositive(earlier, names.get(i));
        }
        int[] beside = neighbours.apply(List.copyOf(all.values())).markedBeside(old);
        int[] turnable =
                IntStream.range(0, old.length)
                        .filter(i -> !old[i] && earlier.containsKey(names.get(i)))
                        .filter(i -> later.containsKey(names.get(i)))
                        .toArray();
        double[] turned =
                Arrays.stream(turnable)
                        .mapToDouble(i -> isPositive(later, names.get(i)) ? 1 : 0)
                        .toArray();
        double[] oldBeside = Arrays.stream(turnable).mapToDouble(i -> beside[i]).toArray();
        int oldBenches = (int) IntStream.range(0, old.length).filter(i -> old[i]).count();
        return tested(oldBenches, turned, oldBeside, permutations);
    }

    private static boolean isPositive(Map<String, BenchCount> round, String name) {
        BenchCount bench = round.get(name);
        return bench != null && bench.isPositive();
    }

    private static NewNextToOld tested(
            int oldBenches, double[] turned, double[] oldBeside, Permutations permutations) {
        int newBenches = (int) Arrays.stream(turned).sum();
        double joins = joins(turned, oldBeside);
        boolean varies = Arrays.stream(oldBeside).distinct().count() > 1;
        boolean someTurned = newBenches > 0 && newBenches < turned.length;
        return new NewNextToOld(
                oldBenches,
                turned.length,
                newBenches,
                (int) joins,
                turned.length == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                newBenches * Arrays.stream(oldBeside).sum() / turned.length),
                varies && someTurned
                        ? OptionalDouble.of(
                                permutations.upperTail(turned, t -> joins(t, oldBeside), joins))
                        : OptionalDouble.empty());
    }

    private static double joins(double[] turned, double[] oldBeside) {
        double joins = 0;
        for (int i = 0; i < turned.length; i++) {
            joins += turned[i] * oldBeside[i];
        }
        return joins;
    }
}
