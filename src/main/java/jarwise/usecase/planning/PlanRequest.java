package jarwise.usecase.planning;

import jarwise.decision.Finding.Subject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A round as it is asked for.
 *
 * @param ask the question with its numbers
 * @param subject which animals
 * @param day on which jars are cut
 * @param start when the walk begins
 * @param stands where jars may be cut; empty while none is chosen
 * @param wantedJars jars that somebody wants to cut; empty for as many as it takes
 * @param assumed what is taken for granted
 * @param extras jars beside the random ones
 * @param seed of the random places
 * @param exception why a stop inside a re-entry interval is allowed, where it is
 */
public record PlanRequest(
        Ask ask,
        Subject subject,
        LocalDate day,
        LocalTime start,
        List<StandThere> stands,
        OptionalInt wantedJars,
        Assumed assumed,
        Extras extras,
        long seed,
        Optional<EntryException> exception) {

    /**
     * A named person answers for entering before the interval has passed.
     *
     * @param by role code
     * @param reason with what the label allows and what is worn
     */
    public record EntryException(String by, String reason) {}

    /**
     * Jars beside the random ones.
     *
     * @param blank whether a wash without plants is among them: it shows what a used fluid carries
     *     over
     * @param spiked individuals put into one jar that is washed like the others; empty for none
     * @param hotSpots stands with one targeted jar each
     */
    public record Extras(boolean blank, OptionalInt spiked, List<StandThere> hotSpots) {

        public Extras {
            hotSpots = List.copyOf(hotSpots);
        }

        /** {@return how many jars that is} */
        public int jars() {
            return (blank ? 1 : 0) + (spiked.isPresent() ? 1 : 0) + hotSpots.size();
        }
    }

    public PlanRequest {
        stands = List.copyOf(stands);
    }
}
