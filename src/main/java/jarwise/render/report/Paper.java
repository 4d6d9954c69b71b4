package jarwise.render.report;

/** Sheets to print on: by country, not by language. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** {@return its width, upright, in mm} */
    public double widthMm() {
        return widthMm;
    }

    /** {@return its height, upright, in mm} */
    public double heightMm() {
        return heightMm;
    }

    /** {@return the page rule for the stylesheet} */
    String pageRule() {
        return "@page{size:%smm %smm;margin:11mm 16mm 8mm}".formatted(widthMm, heightMm);
    }
}
