package jarwise.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** One row on its way into a table: columns with their values, written as text and numbers. */
public final class Row {

    private final String table;
    private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

    private Row(String table) {
        this.table = table;
    }

    public static Row of(String table) {
        return new Row(table);
    }

    public Row with(String column, Object value) {
        values.put(column, plain(value));
        return this;
    }

    /** Adds the row; a row with the same key is a fault. */
    public void insert(Handle handle) {
        handle.createUpdate(insertText()).bindMap(values).execute();
    }

    /** Adds the row, or puts it in the place of the one with the same key. */
    public void put(Handle handle, String... key) {
        List<String> keys = Arrays.asList(key);
        String changes =
                values.keySet().stream()
                        .filter(column -> !keys.contains(column))
                        .map(column -> column + " = excluded." + column)
                        .collect(Collectors.joining(", "));
        String action = changes.isEmpty() ? "nothing" : "update set " + changes;
        handle.createUpdate(
                        "%s on conflict (%s) do %s"
                                .formatted(insertText(), String.join(", ", keys), action))
                .bindMap(values)
                .execute();
    }

    private String insertText() {
        return "insert into %s (%s) values (:%s)"
                .formatted(
                        table,
                        String.join(", ", values.keySet()),
                        String.join(", :", values.keySet()));
    }

    /** {@return the value as the tables hold it} */
    public static @Nullable Object plain(@Nullable Object value) {
        if (value instanceof Optional<?> optional) {
            return plain(optional.orElse(null));
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? number.getAsDouble() : null;
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? number.getAsInt() : null;
        }
        if (value instanceof Instant instant) {
            return Columns.written(instant);
        }
        if (value instanceof LocalDate day) {
            return day.toString();
        }
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT);
        }
        if (value instanceof Boolean flag) {
            return flag ? 1 : 0;
        }
        return value;
    }
}
