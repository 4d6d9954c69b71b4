package jarwise.phenology.window;

import jarwise.stats.thermal.ThermalConstants;
import java.util.Optional;

/**
 * Thermal constants as somebody published them.
 *
 * @param pest code of the pest
 * @param stage stage, or stages from one to another
 * @param host plant or strain; empty if it is not said
 * @param constants T0 and degree-days
 * @param source where they were published
 */
public record PublishedConstants(
        String pest, String stage, String host, ThermalConstants constants, String source) {

    /** From the laying of the egg to the adult. */
    static final String TOTAL = "egg-to-adult";

    /** {@return source and plant in a line} */
    String cited() {
        return Optional.of(host)
                .filter(plant -> !plant.isEmpty())
                .map(plant -> source + " (" + plant + ")")
                .orElse(source);
    }
}
