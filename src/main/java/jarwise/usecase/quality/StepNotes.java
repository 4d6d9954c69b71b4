package jarwise.usecase.quality;

import jarwise.tally.Deed;
import jarwise.tally.SampleFold;
import jarwise.usecase.samples.SampleLog;
import java.util.HashMap;
import java.util.Map;

/** What the steps of a sample noted and nobody took back. */
final class StepNotes {

    private StepNotes() {}

    static Map<String, String> of(SampleFold fold) {
        Map<String, String> notes = new HashMap<>();
        SampleLog.standing(fold).stream()
                .filter(event -> event.deed() instanceof Deed.StepTaken)
                .forEach(event -> notes.putAll(((Deed.StepTaken) event.deed()).facts()));
        return notes;
    }
}
