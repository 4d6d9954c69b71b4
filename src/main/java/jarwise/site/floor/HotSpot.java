package jarwise.site.floor;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Optional;

/**
 * A place known for trouble, where a pest is usually found first: looked at on purpose.
 *
 * @param code its name in the data, unique in the nursery
 * @param house house it lies in
 * @param bench bench that its targeted samples are cut from, where there is one
 * @param kind what it is
 * @param at where in the house
 * @param note what is known of it; may be empty
 */
public record HotSpot(
        String code, String house, Optional<String> bench, Kind kind, Point at, String note) {

    /** What kind of place it is. */
    public enum Kind {
        DOOR,
        VENT,
        ARRIVALS,
        INDICATOR_PLANTS,
        WARM_PLACE,
        OTHER
    }

    /**
     * A place in a house.
     *
     * @param x metres from its left edge
     * @param y metres from its top edge
     */
    public record Point(double x, double y) {
        public Point {
            if (!(Math.abs(x) <= Rectangle.MOST_METRES && Math.abs(y) <= Rectangle.MOST_METRES)) {
                throw new InvalidInput(
                        "A hot spot lies at %s, %s m; it must lie in its house.".formatted(x, y));
            }
        }
    }

    public HotSpot {
        Require.notBlank("hot spot", code);
        Require.notBlank("house", house);
    }
}
