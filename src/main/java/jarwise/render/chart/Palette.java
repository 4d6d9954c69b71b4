package jarwise.render.chart;

/**
 * Colours of one medium. The stylesheets use the same values; a test compares them.
 *
 * @param paper ground
 * @param ink text, marks, outlines
 * @param quiet second text
 * @param pencil grid lines
 * @param edge axes, hatches
 * @param cell filter cells
 */
public record Palette(
        String paper, String ink, String quiet, String pencil, String edge, String cell) {

    /** Pages in daylight. */
    public static final Palette DESK =
            new Palette("#FCFBF7", "#17212B", "#46515B", "#D9D6CB", "#85817A", "#A9A497");

    /** The phone in the house: second text is darker. */
    public static final Palette PHONE =
            new Palette("#FCFBF7", "#17212B", "#3A444D", "#D9D6CB", "#85817A", "#A9A497");

    /** The microscope page. */
    public static final Palette DARK =
            new Palette("#0D0E0B", "#E6DFC8", "#B5AE98", "#3A3A32", "#B5AE98", "#B5AE98");

    /** White paper, black ink. */
    public static final Palette PRINT =
            new Palette("#FFFFFF", "#000000", "#333333", "#BBBBBB", "#777777", "#A9A497");

    static final String EGG = "#56B4E9";
    static final String LARVA = "#E69F00";
    static final String LARVA_PALE = "#FBE6B8";
    static final String PUPA = "#CC79A7";
    static final String ADULT = "#0072B2";
    static final String ADULT_ON_DARK = "#8EC5EE";
    static final String ENEMY = "#009E73";
    static final String OTHER = "#666666";
    static final String WARNING = "#FFF3D6";
    static final String WARNING_RULE = "#8A5A00";

    /** {@return whether the ground is dark} */
    boolean dark() {
        return this.equals(DARK);
    }

    String adult() {
        return dark() ? ADULT_ON_DARK : ADULT;
    }

    String other() {
        return dark() ? quiet : OTHER;
    }

    /** Inside of open marks: white on paper, the ground at the microscope, where nothing glares. */
    public String inside() {
        return dark() ? paper : "#FFFFFF";
    }
}
