package jarwise.usecase.findings;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.plan.Round;
import jarwise.treatment.Application;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The state of a site at one moment.
 *
 * @param rules what the site has chosen
 * @param due what is due, most urgent first
 * @param known one finding a stand and those above the line, most urgent first
 * @param bare stands with a crop where nothing was sampled lately
 * @param round how far the newest round is; empty before the first
 * @param empty whether nothing was ever recorded here
 */
public record Today(
        SiteRules rules,
        List<Due> due,
        List<Finding> known,
        List<Stand> bare,
        Optional<RoundState> round,
        boolean empty) {

    public Today {
        due = List.copyOf(due);
        known = List.copyOf(known);
        bare = List.copyOf(bare);
    }

    /**
     * How far a round is.
     *
     * @param day when it was cut
     * @param cut jars cut
     * @param read jars read
     * @param toRead jars that can still be read
     */
    public record RoundState(LocalDate day, int cut, int read, int toRead) {}

    /** One thing that is due. */
    public sealed interface Due {

        /**
         * Nobody may enter.
         *
         * @param application what was applied, where
         * @param until end of the longest interval; empty where it is not known
         */
        record NoEntry(Application application, Optional<Instant> until) implements Due {}

        /**
         * Filters that wait to be read.
         *
         * @param stand where they were cut
         * @param filters how many
         * @param cut day they were cut
         * @param window when they may be read
         * @param needed time to read them
         */
        record Read(Stand stand, int filters, LocalDate cut, Window window, Duration needed)
                implements Due {}

        /**
         * When filters may be read.
         *
         * @param washed when the first of them was washed
         * @param earliest from when all of them may be read
         * @param readBy when the first of them has dried out
         */
        record Window(Instant washed, Instant earliest, Instant readBy) {}

        /**
         * A place above the line: somebody has to decide.
         *
         * @param finding what is known
         */
        record Decide(Finding finding) implements Due {}

        /**
         * Filters to be read a second time, blind.
         *
         * @param filters how many
         */
        record Recount(int filters) implements Due {}

        /**
         * Samples for which one step was recorded twice, differently.
         *
         * @param samples how many
         */
        record Answer(int samples) implements Due {}

        /**
         * A round to walk.
         *
         * @param round when and where; of a round with labels only the jars that are not cut yet
         * @param name name of the round with its labels; empty where none were made
         */
        record Walk(Round round, Optional<String> name) implements Due {}
    }
}
