package jarwise.web.today;

import jarwise.web.piece.Notes;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.StripRow;
import java.util.List;
import java.util.Optional;

/**
 * The page Today in the reader's words.
 *
 * @param when the moment it stands for
 * @param answer the state in a sentence
 * @param clock what is due
 * @param known what is known; empty where nothing was ever counted here
 * @param empty whether this nursery has no data at all
 */
public record TodayView(
        String when, String answer, Clock clock, Optional<Known> known, boolean empty) {

    /**
     * What is due, by the clock.
     *
     * @param dayHead scale of the shared day, SVG of our own writer
     * @param rows at most seven
     * @param notes beside them
     */
    public record Clock(String dayHead, List<Row> rows, Notes notes) {
        public Clock {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One thing that is due.
     *
     * @param kind plain, stop (must not be done) or later (not today)
     * @param time when, and how long until then
     * @param what what and where, and why
     * @param day its window on the shared day, SVG of our own writer; empty if not today
     * @param button where it is done
     */
    public record Row(
            Kind kind, StripRow.Lines time, StripRow.Lines what, String day, Button button) {}

    /** How a row looks. */
    public enum Kind {
        PLAIN,
        STOP,
        LATER
    }

    /**
     * The one button of a row.
     *
     * @param text a verb
     * @param address page where the work is done
     * @param first whether it is one of the two solid ones
     */
    public record Button(String text, String address, boolean first) {}

    /**
     * What is known, in groups by verdict.
     *
     * @param title heading
     * @param lead how to read it
     * @param head scale of the strips
     * @param groups in order, none empty
     * @param notes beside them
     * @param reasons folded
     */
    public record Known(
            String title,
            String lead,
            Picture.Panel head,
            List<Group> groups,
            Notes notes,
            List<Reason> reasons) {
        public Known {
            groups = List.copyOf(groups);
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Findings with one verdict.
     *
     * @param mark of the verdict, SVG of our own writer
     * @param title its words
     * @param rows most urgent first
     */
    public record Group(String mark, String title, List<StripRow> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }
}
