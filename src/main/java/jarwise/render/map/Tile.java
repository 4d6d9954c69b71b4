package jarwise.render.map;

import jarwise.decision.Verdict;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is drawn on one bench, in the reader's words.
 *
 * @param title short name of the bench
 * @param under variety, or why nothing is known
 * @param figure estimate in figures; may be empty
 * @param chance chance that the bench is above the line; empty where there is none
 * @param ground what lies under the words
 * @param verdict what follows
 * @param noEntry words that keep people away; empty where anybody may enter
 * @param tip everything in one line, for the tooltip
 */
public record Tile(
        String title,
        String under,
        String figure,
        OptionalDouble chance,
        Ground ground,
        Optional<Verdict> verdict,
        Optional<String> noEntry,
        String tip) {

    /** What lies under the words. */
    public enum Ground {
        /** Read: white, or the step of its chance. */
        READ,
        /** Not sampled, or not read: hatched, never blank. */
        UNKNOWN,
        /** No crop is entered. */
        EMPTY
    }

    /** {@return a bench on which nothing stands} */
    public static Tile empty(String title, String tip) {
        return new Tile(
                title,
                "",
                "",
                OptionalDouble.empty(),
                Ground.EMPTY,
                Optional.empty(),
                Optional.empty(),
                tip);
    }

    /** {@return the step of the chance, 1 to 5; 0 where there is none} */
    public int step() {
        return chance.isPresent() ? ChanceSteps.of(chance.getAsDouble()) : 0;
    }
}
