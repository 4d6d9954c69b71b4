package jarwise.site.floor;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Where something stands, as seen from above: a house in the nursery, or a bench in its house.
 *
 * @param x metres from the left edge of what it stands in
 * @param y metres from the top edge of what it stands in, downwards
 * @param length metres from left to right, above 0
 * @param width metres from top to bottom, above 0
 */
public record Rectangle(double x, double y, double length, double width) {

    /** Nothing in a nursery is longer or further away. */
    public static final double MOST_METRES = 10_000;

    public Rectangle {
        place("distance from the left", x);
        place("distance from the top", y);
        Require.positive("length", length);
        Require.positive("width", width);
        place("length", length);
        place("width", width);
    }

    private static void place(String name, double value) {
        if (!(value >= -MOST_METRES && value <= MOST_METRES)) {
            throw new InvalidInput(
                    "%s is %s m; it must be at most %s m."
                            .formatted(name, value, (long) MOST_METRES));
        }
    }

    /** {@return its right edge, metres} */
    public double right() {
        return x + length;
    }

    /** {@return its bottom edge, metres} */
    public double bottom() {
        return y + width;
    }

    /** {@return the same, turned by a quarter about its middle} */
    public Rectangle turned() {
        double middleX = x + length / 2;
        double middleY = y + width / 2;
        return new Rectangle(
                middleX - width / 2,
                middleY - length / 2,
                /* length= */ width,
                /* width= */ length);
    }

    /** {@return the same at another place} */
    public Rectangle at(double newX, double newY) {
        return new Rectangle(newX, newY, length, width);
    }

    /** {@return whether the two share more than an edge} */
    public boolean overlaps(Rectangle other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** {@return whether it lies wholly inside a floor of this length and width} */
    public boolean fitsIn(Rectangle floor) {
        double slack = 1e-9 * (1 + floor.length + floor.width);
        return x >= -slack
                && y >= -slack
                && right() <= floor.length + slack
                && bottom() <= floor.width + slack;
    }
}
