package jarwise.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Columns that may be empty. */
final class Rows {

    private Rows() {}

    static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
        return text(row, column).map(LocalDate::parse);
    }

    static OptionalDouble number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
