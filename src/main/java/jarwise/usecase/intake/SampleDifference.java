package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.EventId;
import jarwise.tally.StageKey;
import jarwise.usecase.intake.SheetSample.SheetCount;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a sheet says about one sample that is not on record yet.
 *
 * @param sample its code
 * @param row first row of the sheet it stands in
 * @param isNew whether the sample is not on record at all
 * @param steps steps to add or to correct
 * @param counts counts to add or to correct
 * @param same counts that are on record already
 * @param revived events that ended the sample, where an import was taken back and comes again
 */
public record SampleDifference(
        SampleCode sample,
        int row,
        boolean isNew,
        List<StepDifference> steps,
        List<CountDifference> counts,
        List<SheetCount> same,
        List<EventId> revived) {

    public SampleDifference {
        steps = List.copyOf(steps);
        counts = List.copyOf(counts);
        same = List.copyOf(same);
        revived = List.copyOf(revived);
    }

    /**
     * A step that the sheet adds, or tells otherwise than it is on record.
     *
     * @param step which
     * @param facts what it notes now
     * @param replaces the record it corrects
     * @param changed old and new value of each fact that changes; empty when the step is new
     */
    public record StepDifference(
            Step step,
            Map<String, String> facts,
            Optional<EventId> replaces,
            List<ChangedFact> changed) {

        public StepDifference {
            facts = Map.copyOf(facts);
            changed = List.copyOf(changed);
        }
    }

    /**
     * One fact told otherwise.
     *
     * @param fact name as in {@link jarwise.tally.Facts}
     * @param before value on record, empty if none
     * @param after value in the sheet, empty if none
     */
    public record ChangedFact(String fact, String before, String after) {}

    /**
     * A count that the sheet adds, or tells otherwise than it is on record.
     *
     * @param key which pest and stage
     * @param before number on record; empty where the count is new
     * @param after number in the sheet
     * @param voids the counts it takes the place of
     */
    public record CountDifference(
            StageKey key, Optional<Long> before, long after, List<EventId> voids) {

        public CountDifference {
            voids = List.copyOf(voids);
        }
    }

    /** {@return whether anything is to be written} */
    public boolean isAny() {
        return !steps.isEmpty() || !counts.isEmpty() || !revived.isEmpty();
    }

    /** {@return how many counts are added} */
    public long added() {
        return counts.stream().filter(count -> count.before().isEmpty()).count();
    }

    /** {@return whether something on record is corrected} */
    public boolean corrects() {
        return counts.stream().anyMatch(count -> count.before().isPresent())
                || steps.stream().anyMatch(step -> !step.changed().isEmpty());
    }
}
