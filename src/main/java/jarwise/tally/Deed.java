package jarwise.tally;

import jarwise.base.Require;
import jarwise.sample.Step;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What an event says. */
public sealed interface Deed {

    /**
     * A step in the life of the sample, with what was noted about it.
     *
     * @param step which
     * @param facts field name to value, as text; names in {@link Facts}
     * @param replaces the earlier step event that this one corrects
     * @param reason why, where it corrects or ends
     */
    record StepTaken(
            Step step,
            Map<String, String> facts,
            Optional<EventId> replaces,
            Optional<String> reason)
            implements Deed {

        public StepTaken {
            facts = Map.copyOf(facts);
        }
    }

    /**
     * Individuals seen. Zero is a value: it says that the stage was looked for and not found.
     *
     * @param pest pest code
     * @param lifeStage stage code of that pest
     * @param individuals 0 or more
     * @param filterCell cell of the filter, where counted cell by cell
     */
    record Counted(String pest, String lifeStage, long individuals, Optional<String> filterCell)
            implements Deed {

        public Counted {
            Require.atLeast("individuals", individuals, 0);
        }
    }

    /**
     * A slip: an earlier count or step is taken back. The slip stays on record.
     *
     * @param slip the event taken back
     * @param reason why
     */
    record Voided(EventId slip, String reason) implements Deed {}

    /**
     * The filter is done: every stage of these pests that has no count was not found.
     *
     * @param pests pest codes that were looked for
     */
    record FilterDone(Set<String> pests) implements Deed {

        public FilterDone {
            pests = Set.copyOf(pests);
        }
    }

    /**
     * A filter called done is open again.
     *
     * @param done the event that called it done
     * @param reason why
     */
    record Reopened(EventId done, String reason) implements Deed {}

    /**
     * One cell of the filter was read to its end, or could not be read.
     *
     * @param filterCell which
     * @param obscured whether it could not be read
     */
    record CellDone(String filterCell, boolean obscured) implements Deed {}
}
