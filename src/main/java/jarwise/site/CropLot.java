package jarwise.site;

import jarwise.base.Require;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Plants of one variety from one source and date.
 *
 * @param code lot number, unique in the nursery
 * @param crop the kind of plant, such as Gerbera
 * @param variety cultivar as the grower calls it
 * @param supplier code of who delivered it
 * @param deliveredOn day of delivery
 * @param edible whether it is labelled for eating, so that pre-harvest intervals matter
 */
public record CropLot(
        String code,
        String crop,
        String variety,
        Optional<String> supplier,
        Optional<LocalDate> deliveredOn,
        boolean edible) {

    public CropLot {
        Require.notBlank("crop lot", code);
        Require.notBlank("variety", variety);
    }
}
