package jarwise.usecase.pattern;

import jarwise.stats.dispersion.CountDispersion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The indices of one group of a sheet.
 *
 * @param group value by grouping column
 * @param dispersion its indices
 */
public record GroupDispersion(Map<String, String> group, CountDispersion dispersion) {

    /** {@return its name for people; empty if the sheet is one group} */
    public String name() {
        List<String> parts = new ArrayList<>();
        group.forEach((column, value) -> parts.add(column + " " + value));
        return String.join(", ", parts);
    }
}
