package jarwise.plan;

import jarwise.base.InvalidInput;

/**
 * A place on a bench.
 *
 * @param along share of the bench's length from its first end, 0 to 1
 * @param across share of its width from the aisle, 0 to 1
 */
public record Spot(double along, double across) {

    public Spot {
        if (!(along >= 0 && along <= 1 && across >= 0 && across <= 1)) {
            throw new InvalidInput(
                    "The place on the bench is %s along, %s across; both must be 0 to 1."
                            .formatted(along, across));
        }
    }
}
