package jarwise.web.piece;

/**
 * One finding as a row of a table of strips, in words.
 *
 * @param place where, and what was looked for
 * @param found animals and jars they were found in
 * @param density how many there are, in words and figures
 * @param strip picture, SVG of our own writer
 * @param mark mark of the verdict, SVG of our own writer
 * @param last verdict or next step, and how sure
 * @param address page on which the next step is done; empty where there is none
 */
public record StripRow(
        Lines place,
        Lines found,
        Lines density,
        Picture.Panel strip,
        String mark,
        Lines last,
        String address) {

    /**
     * Two lines of a cell.
     *
     * @param first what counts
     * @param second what explains it; may be empty
     */
    public record Lines(String first, String second) {}
}
