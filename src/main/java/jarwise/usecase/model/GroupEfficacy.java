package jarwise.usecase.model;

import jarwise.stats.efficacy.EfficacyEstimate;
import jarwise.stats.efficacy.EfficacyTrial;
import java.util.Map;

/**
 * The efficacy of one group of a sheet.
 *
 * @param group value by name of each grouping column; empty without grouping
 * @param trial the samples
 * @param estimate efficacy with its interval
 */
public record GroupEfficacy(
        Map<String, String> group, EfficacyTrial trial, EfficacyEstimate estimate) {

    /** {@return the group in words; empty without grouping} */
    public String name() {
        return name(group);
    }

    static String name(Map<String, String> group) {
        return String.join(
                ", ", group.entrySet().stream().map(e -> e.getKey() + " " + e.getValue()).toList());
    }
}
