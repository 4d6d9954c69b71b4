package jarwise.web.map;

import jarwise.web.findings.FindingsView;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.StripRow;
import jarwise.web.piece.Table;
import java.util.List;
import java.util.Optional;

/**
 * The crop map in the reader's words.
 *
 * @param chooser what is shown, and what else could be
 * @param answer the answer with its round and what stands behind it
 * @param noEntry sentences that keep people away from benches
 * @param stops rounds to choose from
 * @param map the picture; empty where there is no house
 * @param rows the table behind it; empty where nothing was sampled
 * @param around what lies on the plan beside the benches
 * @param reasons folded
 */
public record MapView(
        Chooser chooser,
        Answer answer,
        List<String> noEntry,
        List<Stop> stops,
        Optional<Map> map,
        Optional<Rows> rows,
        Around around,
        List<Reason> reasons) {

    public MapView {
        noEntry = List.copyOf(noEntry);
        stops = List.copyOf(stops);
        reasons = List.copyOf(reasons);
    }

    /**
     * Fields above the answer; a form without script.
     *
     * @param selects animals
     * @param to last day of the rounds that are offered, ISO
     * @param round the round shown, ISO
     */
    public record Chooser(List<FindingsView.Select> selects, String to, String round) {
        public Chooser {
            selects = List.copyOf(selects);
        }
    }

    /**
     * The answer.
     *
     * @param when which animals and which round
     * @param sentence how many benches are above the line, cannot be told, were not sampled
     * @param lead the most urgent places in figures
     */
    public record Answer(String when, String sentence, String lead) {}

    /**
     * A round that can be chosen.
     *
     * @param address of the page that shows it
     * @param day as people write it
     * @param above benches above the line in words
     * @param chosen whether it is the one shown
     * @param walked whether it was walked; false for one that is planned
     */
    public record Stop(String address, String day, String above, boolean chosen, boolean walked) {}

    /**
     * The picture.
     *
     * @param title what it shows
     * @param sub what colours and strokes mean
     * @param picture for desk and phone
     * @param key swatches with their words
     */
    public record Map(String title, String sub, Picture.Panel picture, List<Swatch> key) {
        public Map {
            key = List.copyOf(key);
        }
    }

    /** A swatch, SVG of our own writer, with what it means. */
    public record Swatch(String picture, String words) {}

    /**
     * The table behind the picture, bench by bench.
     *
     * @param title what it says
     * @param sub how many jars, when
     * @param head scale of the strips
     * @param rows most likely above the line first, then what was not sampled
     */
    public record Rows(String title, String sub, Picture.Panel head, List<StripRow> rows) {
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /**
     * What lies on the plan beside the benches.
     *
     * @param hotSpots places known for trouble, with the targeted jars of the round
     * @param targeted targeted jars of the round, apart
     * @param moves plants carried in the weeks before
     * @param notes cautions
     */
    public record Around(
            Optional<Table> hotSpots,
            Optional<FindingsView.Targeted> targeted,
            List<String> moves,
            List<String> notes) {
        public Around {
            moves = List.copyOf(moves);
            notes = List.copyOf(notes);
        }
    }
}
