package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.StageKey;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One sample as a sheet tells it.
 *
 * @param code its code in the sheet, or one made from the sheet's name and the row's place
 * @param row first row it stands in
 * @param facts what each step noted; steps the sheet says nothing about are missing
 * @param counts what was counted; blanks and obscured stages are not among them
 */
public record SheetSample(
        SampleCode code, int row, Map<Step, Map<String, String>> facts, List<SheetCount> counts) {

    public SheetSample {
        EnumMap<Step, Map<String, String>> copy = new EnumMap<>(Step.class);
        copy.putAll(facts);
        facts = copy;
        counts = List.copyOf(counts);
    }

    /**
     * One count of one sample.
     *
     * @param key which pest and stage
     * @param individuals 0 or more
     * @param row where it stands
     */
    public record SheetCount(StageKey key, long individuals, int row) {}
}
