package jarwise.stats.efficacy;

import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One stage of one pest on treated benches and on a check that was left alone, sampled before and
 * after the treatment.
 *
 * @param treated benches that were treated; without blocks all of them as one
 * @param check benches that were left alone; without blocks all of them as one
 */
public record EfficacyTrial(List<TrialBench> treated, List<TrialBench> check) {

    /** Checks that all four groups have samples; throws {@link InvalidInput} naming what lacks. */
    public EfficacyTrial {
        treated = List.copyOf(treated);
        check = List.copyOf(check);
        requireSamples("treated before", of(treated, TrialBench::before));
        requireSamples("treated after", of(treated, TrialBench::after));
        requireSamples("check before", of(check, TrialBench::before));
        requireSamples("check after", of(check, TrialBench::after));
    }

    /**
     * A trial without blocks.
     *
     * @param treatedBefore samples of the treated plants before; at least 1
     * @param treatedAfter samples of the treated plants after; at least 1
     * @param checkBefore samples of the check before; at least 1
     * @param checkAfter samples of the check after; at least 1
     * @return the trial
     * @throws InvalidInput if a group has no sample
     */
    public static EfficacyTrial of(
            List<Observation> treatedBefore,
            List<Observation> treatedAfter,
            List<Observation> checkBefore,
            List<Observation> checkAfter) {
        return new EfficacyTrial(
                List.of(new TrialBench("", treatedBefore, treatedAfter)),
                List.of(new TrialBench("", checkBefore, checkAfter)));
    }

    private static void requireSamples(String group, List<Observation> observations) {
        if (observations.isEmpty()) {
            throw new InvalidInput(
                    ("There is no sample of the group %s; each of the four groups needs at least"
                                    + " 1.")
                            .formatted(group));
        }
    }

    private static List<Observation> of(
            List<TrialBench> benches, Function<TrialBench, List<Observation>> time) {
        return benches.stream().map(time).flatMap(Collection::stream).toList();
    }

    /** {@return all samples of the treated benches from before} */
    public List<Observation> treatedBefore() {
        return of(treated, TrialBench::before);
    }

    /** {@return all samples of the treated benches from after} */
    public List<Observation> treatedAfter() {
        return of(treated, TrialBench::after);
    }

    /** {@return all samples of the check from before} */
    public List<Observation> checkBefore() {
        return of(check, TrialBench::before);
    }

    /** {@return all samples of the check from after} */
    public List<Observation> checkAfter() {
        return of(check, TrialBench::after);
    }

    /** {@return number of samples in all four groups} */
    public int sampleSize() {
        return Stream.of(treatedBefore(), treatedAfter(), checkBefore(), checkAfter())
                .mapToInt(List::size)
                .sum();
    }
}
