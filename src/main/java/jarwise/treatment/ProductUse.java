package jarwise.treatment;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One product of an application, with what its label says as the user typed it in. Nothing here is
 * known to Jarwise of itself: the label is the law.
 *
 * @param product name as the user calls it
 * @param registrationNumber where the user noted it
 * @param modeOfActionGroups group codes from the label, such as 6 or 15; may be empty
 * @param reentryHours restricted-entry interval in hours; empty where nobody typed it in, which
 *     never means that people may enter
 * @param labelMostUses most uses a crop that the label allows
 * @param labelLeastDays least days between two uses
 */
public record ProductUse(
        String product,
        Optional<String> registrationNumber,
        List<String> modeOfActionGroups,
        OptionalDouble reentryHours,
        OptionalInt labelMostUses,
        OptionalInt labelLeastDays) {

    public ProductUse {
        Require.notBlank("product", product);
        modeOfActionGroups = List.copyOf(modeOfActionGroups);
        for (String group : modeOfActionGroups) {
            if (group.isBlank() || group.contains(",")) {
                throw new InvalidInput(
                        ("The group of %s is '%s'; it must be one group code without a comma."
                                        + " Maybe these are two groups.")
                                .formatted(product, group));
            }
        }
        if (reentryHours.isPresent()) {
            Require.notNegative("re-entry hours of " + product, reentryHours.getAsDouble());
        }
        if (labelMostUses.isPresent()) {
            Require.atLeast("most uses of " + product, labelMostUses.getAsInt(), 1);
        }
        if (labelLeastDays.isPresent()) {
            Require.atLeast("days between uses of " + product, labelLeastDays.getAsInt(), 0);
        }
    }
}
