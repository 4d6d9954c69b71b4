package jarwise.usecase.planning;

import jarwise.decision.Stand;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A crop lot on a bench, which jars can be cut from.
 *
 * @param house greenhouse
 * @param housePlace its place in the order of the houses, from 0
 * @param bench bench
 * @param lot what stands there
 * @param growingPoints growing points standing, where plants and points were estimated
 */
public record StandThere(
        House house, int housePlace, Bench bench, CropLot lot, OptionalDouble growingPoints) {

    /** {@return a name for forms} */
    public String key() {
        return bench.code() + "/" + lot.code();
    }

    /** {@return as findings name it} */
    public Stand stand() {
        return new Stand(Optional.of(bench.code()), Optional.of(lot.variety()));
    }
}
