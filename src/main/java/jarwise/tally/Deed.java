package jarwise.tally;

import jarwise.base.InvalidInput;
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

    /**
     * A find was taken off the filter and kept, to be looked at again.
     *
     * @param filterCell where it lay
     * @param number on the filter, from 1
     * @param press the count that it belongs to, where it was counted
     */
    record VoucherKept(String filterCell, int number, Optional<EventId> press) implements Deed {

        public VoucherKept {
            Require.notBlank("filter_cell", filterCell);
            Require.atLeast("number", number, 1);
        }
    }

    /**
     * A photo was taken of a find that was kept. The photo itself travels apart from this.
     *
     * @param voucher the event that says the find was kept
     * @param sha256 hash of the photo, 64 hexadecimal digits
     * @param bytes how large it is
     */
    record PhotoTaken(EventId voucher, String sha256, long bytes) implements Deed {

        public PhotoTaken {
            if (!sha256.matches("[0-9a-f]{64}")) {
                throw new InvalidInput(
                        "'sha256' is '%s'; it must be 64 hexadecimal digits, 0-9 and a-f."
                                .formatted(sha256));
            }
            Require.atLeast("bytes", bytes, 1);
        }
    }
}
