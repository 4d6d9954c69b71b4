package jarwise.tally;

import jarwise.sample.Step;
import java.util.List;

/**
 * One step recorded twice with different facts, neither record naming the other. Until a person
 * answers, the one with the smaller identity counts.
 *
 * @param step which step
 * @param records the events, smallest identity first
 */
public record OpenQuestion(Step step, List<SampleEvent> records) {

    public OpenQuestion {
        records = List.copyOf(records);
    }
}
