package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How many samples from which part of the crop?
 *
 * @param method in which ratio
 * @param shares one a stratum, in the order given
 */
public record Allocation(Method method, List<Share> shares) {

    /** The usual least number in a stratum: with one sample there is no variance within it. */
    public static final int LEAST = 2;

    private static final double SAME = 1e-9; // remainders that differ by less are a tie

    /** In which ratio samples are shared out. */
    public enum Method {
        /** As many as stand there. */
        PROPORTIONAL,
        /** Size times standard deviation over the root of the cost. */
        NEYMAN
    }

    /**
     * What one stratum gets.
     *
     * @param stratum the stratum
     * @param samplesExact before rounding
     * @param sampleSize whole samples, the least number of the plan or more
     */
    public record Share(AllocatedStratum stratum, double samplesExact, int sampleSize) {}

    /** Keeps the list from being changed. */
    public Allocation {
        shares = List.copyOf(shares);
    }

    /**
     * Shares samples out among strata.
     *
     * <pre>
     *   proportional: samples(h) ∝ N(h)
     *   Neyman:       samples(h) ∝ N(h) · S(h) / √c(h)
     * </pre>
     *
     * <p>Neyman's ratio, if every stratum has a standard deviation: it gives the smallest variance
     * of the crop's mean for what is spent. Otherwise proportional. A stratum that would get under
     * {@value #LEAST} gets {@value #LEAST}, and the others share the rest in the same ratio.
     * Rounded by largest remainder; a tie goes to the larger share before rounding, then to the
     * name that is first by code point, so that the order in which strata are given does not
     * matter.
     *
     * <p><b>Source.</b> Neyman (1934), <i>Journal of the Royal Statistical Society</i> 97:558-625;
     * Cochran (1977), <i>Sampling Techniques</i>, ch. 5, for costs (both from memory). Checked by
     * {@code reference/design/allocation.csv} (own arithmetic).
     *
     * @param strata parts of the crop, at least 1, each with a name of its own
     * @param samples samples in all, at least two for each stratum
     * @return what each gets; adds up to {@code samples}
     * @throws InvalidInput if there is no stratum, a name is given twice, there are too few
     *     samples, only some have a standard deviation, or every standard deviation is 0
     */
    public static Allocation of(List<AllocatedStratum> strata, int samples) {
        return of(strata, samples, LEAST);
    }

    /**
     * Shares samples out as {@link #of(List, int)} does, with another least number: one where no
     * mean of a stratum is wanted, as in a search.
     *
     * @param strata parts of the crop, at least 1, each with a name of its own
     * @param samples samples in all, at least {@code least} for each stratum
     * @param least samples that every stratum gets, 1 or more
     * @return what each gets; adds up to {@code samples}
     * @throws InvalidInput as above
     */
    public static Allocation of(List<AllocatedStratum> strata, int samples, int least) {
        Require.atLeast("least", least, 1);
        check(strata, samples, least);
        boolean known = strata.get(0).standardDeviation().isPresent();
        double[] weights = strata.stream().mapToDouble(Allocation::weight).toArray();
        double[] exact = atLeast(weights, samples, least);
        int[] whole = wholeNumbers(strata, exact, samples);
        List<Share> shares = new ArrayList<>();
        for (int h = 0; h < whole.length; h++) {
            shares.add(new Share(strata.get(h), exact[h], whole[h]));
        }
        return new Allocation(known ? Method.NEYMAN : Method.PROPORTIONAL, shares);
    }

    private static void check(List<AllocatedStratum> strata, int samples, int least) {
        Require.atLeast("strata", strata.size(), 1);
        if (strata.stream().map(AllocatedStratum::name).distinct().count() < strata.size()) {
            throw new InvalidInput("A stratum is named twice; each must have a name of its own.");
        }
        Require.atLeast(
                "samples in all, at %d for each of %d strata,".formatted(least, strata.size()),
                samples,
                (long) least * strata.size());
        long known = strata.stream().filter(s -> s.standardDeviation().isPresent()).count();
        if (known > 0 && known < strata.size()) {
            throw new InvalidInput(
                    ("%d of %d strata have a standard deviation; all or none must have one."
                                    + " Maybe leave it out everywhere.")
                            .formatted(known, strata.size()));
        }
        if (known > 0 && strata.stream().allMatch(s -> weight(s) == 0)) {
            throw new InvalidInput(
                    "Every standard deviation is 0; at least one must be above 0."
                            + " Maybe leave it out: then samples go by size.");
        }
    }

    private static double weight(AllocatedStratum stratum) {
        double size = stratum.samplingUnitsStanding();
        return stratum.standardDeviation().isPresent()
                ? size
                        * stratum.standardDeviation().getAsDouble()
                        / Math.sqrt(stratum.costOfSample())
                : size;
    }

    /** Who falls under the least is set to it, until the rest can be shared out in the ratio. */
    private static double[] atLeast(double[] weights, int samples, int least) {
        boolean[] atLeast = new boolean[weights.length];
        double largest = Arrays.stream(weights).max().orElseThrow();
        while (true) {
            double free = samples;
            double sum = 0;
            for (int h = 0; h < weights.length; h++) {
                free -= atLeast[h] ? least : 0;
                sum += atLeast[h] ? 0 : weights[h] / largest;
            }
            double[] exact = new double[weights.length];
            boolean under = false;
            for (int h = 0; h < weights.length; h++) {
                exact[h] = atLeast[h] ? least : free * (weights[h] / largest / sum);
                if (exact[h] < least) {
                    atLeast[h] = true;
                    under = true;
                }
            }
            if (!under) {
                return exact;
            }
        }
    }

    private static int[] wholeNumbers(List<AllocatedStratum> strata, double[] exact, int samples) {
        int[] whole = new int[exact.length];
        int left = samples;
        List<Integer> order = new ArrayList<>();
        for (int h = 0; h < exact.length; h++) {
            whole[h] = (int) Math.floor(exact[h] + SAME);
            left -= whole[h];
            order.add(h);
        }
        order.sort(
                Comparator.comparingLong((Integer h) -> -Math.round((exact[h] - whole[h]) / SAME))
                        .thenComparingLong(h -> -Math.round(exact[h] / SAME))
                        .thenComparing(h -> strata.get(h).name(), Allocation::byCodePoint));
        for (int i = 0; i < left; i++) {
            whole[order.get(i)]++;
        }
        return whole;
    }

    private static int byCodePoint(String a, String b) {
        return Arrays.compare(a.codePoints().toArray(), b.codePoints().toArray());
    }

    /** {@return samples in all} */
    public int sampleSize() {
        return shares.stream().mapToInt(Share::sampleSize).sum();
    }

    /** {@return what all samples cost together} */
    public double cost() {
        return shares.stream().mapToDouble(s -> s.sampleSize() * s.stratum().costOfSample()).sum();
    }

    /**
     * Standard error of the crop's mean to be expected.
     *
     * <pre>
     *   √ Σ W(h)² S(h)² / samples(h),   W(h) = N(h) / Σ N
     * </pre>
     *
     * <p>Without a finite-population correction: errs on the high side where a large part is taken.
     *
     * @return 0 or more; empty if the standard deviations are not known
     */
    public OptionalDouble standardError() {
        if (method == Method.PROPORTIONAL) {
            return OptionalDouble.empty();
        }
        double all = shares.stream().mapToDouble(s -> s.stratum().samplingUnitsStanding()).sum();
        double variance = 0;
        for (Share share : shares) {
            double weight = share.stratum().samplingUnitsStanding() / all;
            double deviation = share.stratum().standardDeviation().orElse(0);
            variance += weight * weight * deviation * deviation / share.sampleSize();
        }
        return OptionalDouble.of(Math.sqrt(variance));
    }
}
