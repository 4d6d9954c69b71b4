package jarwise.render.report;

import java.util.List;

/**
 * How much of a letter is said so that it stays on one page. The more there is to say, the less is
 * drawn; a warning is never left out.
 *
 * @param rows most rows of the table
 * @param paragraphs most paragraphs
 * @param trends whether the small trends are drawn
 * @param tight whether letters and lines are a little smaller
 * @param characters longest text of one paragraph
 */
record Fit(int rows, int paragraphs, boolean trends, boolean tight, int characters) {

    /** From all to the least. */
    static final List<Fit> STEPS =
            List.of(
                    new Fit(6, 6, true, false, 600),
                    new Fit(6, 6, true, true, 600),
                    new Fit(6, 4, true, true, 420),
                    new Fit(5, 4, true, true, 300),
                    new Fit(4, 2, true, true, 260),
                    new Fit(4, 2, false, true, 220),
                    new Fit(3, 1, false, true, 160));

    /** {@return the text, cut after a word where it is too long for this fit} */
    String cut(String text) {
        if (text.length() <= characters) {
            return text;
        }
        int end = text.lastIndexOf(' ', characters);
        return text.substring(0, end > 0 ? end : characters) + " …";
    }
}
