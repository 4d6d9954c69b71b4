package jarwise.render.label;

/**
 * A rectangle on a sheet, mm from its upper left corner.
 *
 * @param x left edge
 * @param y upper edge
 * @param width above 0
 * @param height above 0
 */
public record Box(double x, double y, double width, double height) {

    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    /** {@return the same rectangle moved} */
    Box moved(double across, double down) {
        return new Box(x + across, y + down, width, height);
    }
}
