package jarwise.render.label;

/** The marks of life stages, in black: told apart by their shape alone. */
record StageSign(Drawing page) {

    private static final double SIZE = 4;

    void draw(String stage, double x, double y) {
        page.ink(0);
        page.pen(0.6);
        switch (stage) {
            case "egg" -> page.circle(false, x, y, SIZE * 0.8);
            case "larva-1" -> {
                page.circle(false, x, y, SIZE);
                page.fillInk(0);
                page.circle(true, x, y, SIZE * 0.25);
            }
            case "larva-2" -> full(0.3, () -> page.circle(true, x, y, SIZE));
            case "pupal" -> page.fill(new Box(x - 3.6, y - 3.6, 7.2, 7.2));
            case "adult" -> full(0, () -> triangle(true, x, y));
            case "male" -> triangle(false, x, y);
            case "predator" ->
                    full(
                            0,
                            () ->
                                    page.polygon(
                                            true,
                                            x,
                                            y - SIZE - 1,
                                            x + SIZE,
                                            y,
                                            x,
                                            y + SIZE + 1,
                                            x - SIZE,
                                            y));
            case "other" -> {
                page.pen(1.2);
                page.line(x - 3, y - 3, x + 3, y + 3);
                page.line(x - 3, y + 3, x + 3, y - 3);
            }
            case "unsure" -> page.textAt(x, y + 3.6, Type.bold(28), "?");
            default -> {
                // a key that is no stage has no mark
            }
        }
        page.fillInk(0);
    }

    private void full(double grey, Runnable shape) {
        page.fillInk(grey);
        shape.run();
    }

    private void triangle(boolean filled, double x, double y) {
        page.polygon(filled, x, y - SIZE, x + SIZE + 0.4, y + 3.4, x - SIZE - 0.4, y + 3.4);
    }
}
