package jarwise.render.map;

/**
 * A rectangle of a picture, px.
 *
 * @param x left edge
 * @param y top edge
 * @param width from left to right
 * @param height from top to bottom
 */
record Box(double x, double y, double width, double height) {

    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double middle() {
        return x + width / 2;
    }
}
