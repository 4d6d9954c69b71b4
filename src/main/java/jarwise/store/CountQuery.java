package jarwise.store;

import jarwise.base.Require;
import jarwise.sample.CollectedSample;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.tally.StageKey;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which counts are wanted.
 *
 * @param nursery slug of the site
 * @param method how the samples were taken; methods are never mixed
 * @param stages stages added up, at least one
 * @param from first day
 * @param to last day
 * @param purpose random samples for a mean; empty for both kinds
 * @param house only this house
 * @param bench only this bench
 * @param variety only this variety
 */
public record CountQuery(
        String nursery,
        SamplingMethod method,
        List<StageKey> stages,
        LocalDate from,
        LocalDate to,
        Optional<Purpose> purpose,
        Optional<String> house,
        Optional<String> bench,
        Optional<String> variety) {

    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    public CountQuery {
        Require.atLeast("life stages", stages.size(), 1);
        stages = List.copyOf(stages);
    }

    /** {@return random samples of every place: what a mean may be made of} */
    public static CountQuery random(
            String nursery,
            SamplingMethod method,
            List<StageKey> stages,
            LocalDate from,
            LocalDate to) {
        return new CountQuery(
                nursery,
                method,
                stages,
                from,
                to,
                Optional.of(Purpose.RANDOM),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * What a sample adds to the counts asked for, individuals added up over the stages.
     *
     * @return empty for a sample that is not asked for, and for one in which any of these stages
     *     was not read: not read is no zero
     */
    public Optional<CountedSample> of(TalliedSample tallied) {
        return asksFor(tallied.sample())
                ? individuals(tallied.individuals())
                        .map(sum -> new CountedSample(tallied.sample(), sum))
                : Optional.empty();
    }

    private boolean asksFor(CollectedSample sample) {
        return sample.method() == method
                && sample.role() == SampleRole.CROP
                && READ.contains(sample.state())
                && sample.reading().cellsRead() > 0
                && sample.collectedOn().filter(this::covers).isPresent()
                && (purpose.isEmpty() || purpose.get() == sample.purpose())
                && (house.isEmpty() || house.equals(sample.place().house()))
                && (bench.isEmpty() || bench.equals(sample.place().bench()))
                && (variety.isEmpty() || variety.equals(sample.place().variety()));
    }

    private boolean covers(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    private Optional<Long> individuals(Map<StageKey, Long> counts) {
        long sum = 0;
        for (StageKey stage : stages) {
            Long individuals = counts.get(stage);
            if (individuals == null) {
                return Optional.empty();
            }
            sum += individuals;
        }
        return Optional.of(sum);
    }
}
