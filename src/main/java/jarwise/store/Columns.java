package jarwise.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Columns of a row that came out of a table, as the types of the trade. */
public record Columns(ResultSet row) {

    private static final DateTimeFormatter INSTANT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

    /** {@return an instant as UTC text of fixed width: it sorts as time in either database} */
    static String written(Instant instant) {
        return INSTANT.format(instant);
    }

    public String text(String column) throws SQLException {
        return row.getString(column);
    }

    public Optional<String> optional(String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    public Instant instant(String column) throws SQLException {
        return Instant.parse(row.getString(column));
    }

    public Optional<Instant> optionalInstant(String column) throws SQLException {
        return optional(column).map(Instant::parse);
    }

    public LocalDate day(String column) throws SQLException {
        return LocalDate.parse(row.getString(column));
    }

    public Optional<LocalDate> optionalDay(String column) throws SQLException {
        return optional(column).map(LocalDate::parse);
    }

    public double number(String column) throws SQLException {
        return row.getDouble(column);
    }

    public OptionalDouble optionalNumber(String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    public int whole(String column) throws SQLException {
        return row.getInt(column);
    }

    public OptionalInt optionalWhole(String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(value);
    }

    public OptionalLong optionalLong(String column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? OptionalLong.empty() : OptionalLong.of(value);
    }

    public long longNumber(String column) throws SQLException {
        return row.getLong(column);
    }

    public boolean flag(String column) throws SQLException {
        return row.getInt(column) != 0;
    }

    public <E extends Enum<E>> E word(Class<E> type, String column) throws SQLException {
        return Enum.valueOf(type, text(column).toUpperCase(Locale.ROOT));
    }

    public <E extends Enum<E>> Optional<E> optionalWord(Class<E> type, String column)
            throws SQLException {
        return optional(column).map(word -> Enum.valueOf(type, word.toUpperCase(Locale.ROOT)));
    }
}
