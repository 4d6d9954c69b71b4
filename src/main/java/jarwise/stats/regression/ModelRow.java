package jarwise.stats.regression;

import java.util.Map;

/**
 * One count, with the values of everything that it may depend on.
 *
 * @param values text by name of the column
 * @param exposure sampling units times share of the filter read, above 0
 * @param individuals the count, 0 or more
 * @param frequency for how many such samples it stands, above 0
 */
public record ModelRow(
        Map<String, String> values, double exposure, long individuals, double frequency) {

    public ModelRow {
        values = Map.copyOf(values);
    }
}
