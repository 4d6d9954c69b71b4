package jarwise.render.report;

import jarwise.render.chart.FilterEmblem;
import jarwise.render.chart.Palette;
import jarwise.render.chart.SmallTrend;
import jarwise.render.chart.Strip;
import jarwise.render.chart.VerdictMarks;
import jarwise.render.report.Letter.Going;
import jarwise.render.report.Letter.Paragraph;
import jarwise.render.report.Letter.Row;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What the template of the letter asks for: texts in order and pictures as SVG. */
public final class LetterPage {

    private final Letter letter;
    private final Fit fit;
    private final String css;
    private final Words words;
    private final Strip strip;

    LetterPage(Letter letter, Fit fit, String css) {
        this.letter = letter;
        this.fit = fit;
        this.css = css;
        words = Words.of(letter.language());
        strip = Strip.letter(letter.axis(), words);
    }

    /** {@return the letter itself} */
    public Letter letter() {
        return letter;
    }

    /** {@return the stylesheet} */
    public String css() {
        return css;
    }

    /** {@return the class of the body: tight where there is much to say} */
    public String density() {
        return fit.tight() ? "letter tight" : "letter";
    }

    /** {@return a text of the message files} */
    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** {@return "Scouting letter 10, Thursday 7 May 2026"} */
    public String title() {
        String day = new Days(words).full(letter.head().day());
        return words.say("letter.title", Integer.toString(letter.head().number()), day);
    }

    /** {@return who writes to whom about what} */
    public String address() {
        Letter.Head head = letter.head();
        return words.say("letter.to", head.to(), head.from()) + " " + head.about();
    }

    /** {@return the decision} */
    public String answer() {
        return fit.cut(letter.answer());
    }

    /** {@return the rows that fit} */
    public List<Row> rows() {
        return letter.rows().subList(0, Math.min(fit.rows(), letter.rows().size()));
    }

    /** {@return "and 3 more on the page", or nothing} */
    public String more() {
        int left = letter.rows().size() - rows().size();
        return left == 0 ? "" : new Figures(words).counted("letter.more", left);
    }

    /** {@return what is said under the table} */
    public String caption() {
        return letter.lineNote() + " " + words.say("letter.key");
    }

    /** {@return the emblem} */
    public String emblem() {
        return FilterEmblem.draw(34, Palette.PRINT);
    }

    /** {@return the head of the strips} */
    public String stripHead() {
        return strip.head();
    }

    /** {@return the strip of a row} */
    public String strip(Row row) {
        return strip.row(row.interval(), row.place() + ": " + row.found() + ", " + verdict(row));
    }

    /** {@return the mark of a row's verdict} */
    public String mark(Row row) {
        return row.verdict()
                .map(verdict -> VerdictMarks.draw(verdict, 22, Palette.PRINT))
                .orElseGet(() -> VerdictMarks.unknown(22, Palette.PRINT));
    }

    /** {@return a row's verdict in words} */
    public String verdict(Row row) {
        return row.verdict()
                .map(
                        verdict ->
                                words.say(
                                        switch (verdict) {
                                            case BELOW_THE_LINE -> "verdict.below";
                                            case ABOVE_THE_LINE -> "verdict.above";
                                            case CANNOT_TELL -> "verdict.cannot-tell";
                                        }))
                .orElseGet(() -> new Figures(words).interval(row.interval()));
    }

    /** {@return the small trends, at most three} */
    public List<String> trends() {
        List<String> drawn = new ArrayList<>();
        if (fit.trends()) {
            SmallTrend small = new SmallTrend(letter.axis(), words);
            for (Going going : letter.goings().stream().limit(3).toList()) {
                drawn.add(small.draw(going.trend(), going.happening(), drawn.isEmpty()));
            }
        }
        return drawn;
    }

    /** {@return paragraphs of the left column, 0, or the right one, 1} */
    public List<Paragraph> column(int side) {
        List<Paragraph> shown =
                letter.paragraphs().stream()
                        .limit(fit.paragraphs())
                        .map(p -> new Paragraph(p.lead(), fit.cut(p.text())))
                        .toList();
        int half = (shown.size() + 1) / 2;
        return side == 0 ? shown.subList(0, half) : shown.subList(half, shown.size());
    }

    /** {@return how sure} */
    public String howSure() {
        return fit.cut(letter.howSure());
    }

    /** {@return what every letter says: what a wash does not show, and whose decision it is} */
    public String cautions() {
        List<String> said = new ArrayList<>();
        said.add(words.say("caution.zero"));
        said.add(words.say("caution.unseen"));
        if (letter.recentTreatment()) {
            said.add(words.say("caution.dead"));
        }
        said.add(words.say("caution.identification"));
        said.add(words.say("caution.thresholds"));
        said.add(words.say("caution.adviser"));
        return String.join(" ", said);
    }
}
