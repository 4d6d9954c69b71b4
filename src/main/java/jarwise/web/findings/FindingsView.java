package jarwise.web.findings;

import jarwise.web.piece.Notes;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.StripRow;
import jarwise.web.piece.Table;
import java.util.List;
import java.util.Optional;

/**
 * The page Findings in the reader's words.
 *
 * @param chooser what is shown, and what else could be
 * @param answer the answer in a sentence
 * @param lead the figures behind it
 * @param sections pictures and tables, in order
 * @param reasons folded
 * @param empty whether this nursery has no counts at all
 */
public record FindingsView(
        Chooser chooser,
        String answer,
        String lead,
        Sections sections,
        List<Reason> reasons,
        boolean empty) {

    public FindingsView {
        reasons = List.copyOf(reasons);
    }

    /**
     * Fields of the chooser; a form without script.
     *
     * @param selects in order
     * @param from first day, ISO
     * @param to last day, ISO
     */
    public record Chooser(List<Select> selects, String from, String to) {
        public Chooser {
            selects = List.copyOf(selects);
        }
    }

    /**
     * One field with a list.
     *
     * @param name of the field in the address
     * @param label what it chooses
     * @param options in order
     */
    public record Select(String name, String label, List<Option> options) {
        public Select {
            options = List.copyOf(options);
        }
    }

    /**
     * One entry of a list.
     *
     * @param value in the address
     * @param text shown
     * @param chosen whether it is the present one
     */
    public record Option(String value, String text, boolean chosen) {}

    /**
     * The parts of the page; each only where there is something to show.
     *
     * @param trend rounds of each bench
     * @param benches the last round of each bench
     * @param stages stages by round
     * @param targeted targeted samples, apart
     * @param downloads addresses of the data and the picture
     */
    public record Sections(
            Optional<Figure> trend,
            Optional<Benches> benches,
            Optional<Figure> stages,
            Optional<Targeted> targeted,
            Downloads downloads) {}

    /**
     * A picture with its heading and its table.
     *
     * @param title says what it shows
     * @param sub units and sample sizes
     * @param picture panels
     * @param table every value
     * @param notes beside it
     */
    public record Figure(String title, String sub, Picture picture, Table table, Notes notes) {}

    /**
     * Strips by bench and variety.
     *
     * @param title says what it shows
     * @param sub units and sample sizes
     * @param head scale of the strips
     * @param rows densest first
     * @param notes beside it
     */
    public record Benches(
            String title, String sub, Picture.Panel head, List<StripRow> rows, Notes notes) {
        public Benches {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Targeted samples.
     *
     * @param sub why they stand apart
     * @param table one row a sample
     */
    public record Targeted(String sub, Table table) {}

    /**
     * Where the page's data can be had.
     *
     * @param csv address of the sheet
     * @param svg address of the picture; empty where there is none
     */
    public record Downloads(String csv, String svg) {}
}
