package jarwise.web.report;

import jarwise.render.report.Letter;
import jarwise.web.piece.Picture;
import jarwise.web.piece.StripRow;
import java.util.List;

/**
 * The letter as a page.
 *
 * @param letter what it says
 * @param title number and date
 * @param address who writes to whom about what
 * @param table places, the most urgent first
 * @param trends small trends, SVG of our own writer
 * @param choices animals a letter can be about
 */
public record ReportView(
        Letter letter,
        String title,
        String address,
        Places table,
        List<String> trends,
        List<Choice> choices) {

    public ReportView {
        trends = List.copyOf(trends);
        choices = List.copyOf(choices);
    }

    /**
     * The places of the letter.
     *
     * @param head scale of the strips
     * @param rows one a place; {@code found} holds the verdict, {@code density} the deed
     */
    public record Places(Picture.Panel head, List<StripRow> rows) {
        public Places {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Animals a letter can be about.
     *
     * @param text what they are called
     * @param query their choice in the address
     * @param chosen whether this letter is about them
     */
    public record Choice(String text, String query, boolean chosen) {}

    /** {@return keys of what every letter says} */
    public List<String> cautions() {
        String dead = letter.recentTreatment() ? "caution.dead" : "caution.zero";
        return List.of(
                        "caution.zero",
                        "caution.unseen",
                        dead,
                        "caution.identification",
                        "caution.thresholds",
                        "caution.adviser")
                .stream()
                .distinct()
                .toList();
    }

    /** {@return the choice of animals for the downloads} */
    public String query() {
        return choices.stream().filter(Choice::chosen).map(Choice::query).findFirst().orElse("");
    }
}
