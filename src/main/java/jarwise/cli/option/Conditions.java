package jarwise.cli.option;

import jarwise.base.InvalidInput;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which rows of a sheet to keep, as typed after {@code --where}. */
public final class Conditions {

    private Conditions() {}

    /**
     * Takes {@code stage=larva,adult,bench=3} as stage larva or adult, and bench 3.
     *
     * @param where what was typed, split at commas
     * @return for each column the values to keep
     * @throws InvalidInput if the first part names no column
     */
    public static Map<String, Set<String>> of(List<String> where) {
        Map<String, Set<String>> conditions = new LinkedHashMap<>();
        String column = "";
        for (String part : where) {
            int equals = part.indexOf('=');
            if (equals == 0 || (equals < 0 && column.isEmpty())) {
                throw new InvalidInput(
                        ("--where is \"%s\"; COLUMN=VALUE is allowed."
                                        + " Maybe: --where stage=larva")
                                .formatted(part));
            }
            column = equals < 0 ? column : part.substring(0, equals).strip();
            String value = part.substring(equals + 1).strip();
            conditions.computeIfAbsent(column, c -> new LinkedHashSet<>()).add(value);
        }
        return conditions;
    }
}
