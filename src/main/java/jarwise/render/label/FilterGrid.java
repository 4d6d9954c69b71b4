package jarwise.render.label;

/**
 * The filter's grid: 40 cells of 10 mm in rows of 4, 6, 6, 8, 6, 6 and 4, which fill a circle of
 * 40.5 mm radius but for slivers.
 */
record FilterGrid(Drawing page) {

    /** Radius of the circle around all cells, mm. */
    static final double RADIUS = 40.5;

    static final double CELL = 10;

    private static final int[] ROWS = {4, 6, 6, 8, 6, 6, 4};
    private static final int COLUMNS = 8;

    /** Draws circle and cells around a middle; {@code scale} is 1 for true size. */
    void cells(double x, double y, double scale) {
        double cell = CELL * scale;
        for (int row = 0; row < ROWS.length; row++) {
            double top = y + (row - ROWS.length / 2.0) * cell;
            double left = x - ROWS[row] * cell / 2;
            for (int column = 0; column < ROWS[row]; column++) {
                page.frame(new Box(left + column * cell, top, cell, cell));
            }
        }
    }

    /** The same, tiny: the mark of the house. */
    void emblem(double x, double y, double radius) {
        page.ink(0.55);
        page.pen(0.08);
        cells(x, y, radius / RADIUS);
        page.ink(0);
        page.pen(0.2);
        page.circle(false, x, y, radius);
    }

    /** True to scale, with letters and numbers of the cells around it. */
    void template(double x, double y) {
        page.ink(0);
        page.pen(0.2);
        cells(x, y, 1);
        page.pen(0.35);
        page.circle(false, x, y, RADIUS);
        page.fillInk(0);
        Type type = Type.bold(9);
        for (int row = 0; row < ROWS.length; row++) {
            double baseline = y + (row - ROWS.length / 2.0 + 0.5) * CELL + 1.1;
            String letter = String.valueOf((char) ('A' + row));
            page.textAt(x - RADIUS - 3.2, baseline, type, letter);
            page.textAt(x + RADIUS + 3.2, baseline, type, letter);
        }
        for (int column = 0; column < COLUMNS; column++) {
            double middle = x + (column - COLUMNS / 2.0 + 0.5) * CELL;
            page.textAt(middle, y - RADIUS - 2, type, String.valueOf(column + 1));
            page.textAt(middle, y + RADIUS + 4.2, type, String.valueOf(column + 1));
        }
    }
}
