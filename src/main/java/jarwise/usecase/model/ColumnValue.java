package jarwise.usecase.model;

import jarwise.base.Guess;
import jarwise.base.InvalidInput;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;

/**
 * Rows with this value in this column.
 *
 * @param column name of the column, as it was asked for
 * @param value text in it
 */
public record ColumnValue(String column, String value) {

    boolean matches(Map<String, String> values) {
        return value.equals(values.get(column));
    }

    /** Refuses a value that no row has. */
    void requireAmong(String option, SortedSet<String> there) {
        if (!there.contains(value)) {
            throw new InvalidInput(
                    "%s is %s=%s, but no row has that; in %s there are: %s. Maybe %s=%s"
                            .formatted(
                                    option,
                                    column,
                                    value,
                                    column,
                                    String.join(", ", there),
                                    column,
                                    Guess.among(there, value)));
        }
    }

    /** {@return the opposite: what was given for it, else the only other value of the column} */
    ColumnValue opposite(Optional<ColumnValue> given, String option, SortedSet<String> there) {
        if (given.isPresent()) {
            return given.get();
        }
        if (there.size() != 2) {
            throw new InvalidInput(
                    ("%s is not given, and column %s has %d values (%s); with exactly two it can be"
                                    + " left out. Without a check and a time before there is only a"
                                    + " change, never an efficacy. Maybe: %s %s=%s")
                            .formatted(
                                    option,
                                    column,
                                    there.size(),
                                    String.join(", ", there),
                                    option,
                                    column,
                                    there.stream()
                                            .filter(other -> !other.equals(value))
                                            .findFirst()
                                            .orElse("VALUE")));
        }
        String other = there.first().equals(value) ? there.last() : there.first();
        return new ColumnValue(column, other);
    }
}
