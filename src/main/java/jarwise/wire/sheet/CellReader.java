package jarwise.wire.sheet;

import jarwise.wire.table.FaultKind;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers and dates as people type them. Whatever could mean two things is not read at all.
 *
 * @param decimalComma whether 2,5 is a number
 */
public record CellReader(boolean decimalComma) {

    /** Far above any jar; a larger number is a slip of the finger or a code in the wrong column. */
    static final long LARGEST_COUNT = 1_000_000_000L;

    private static final Pattern WHOLE = Pattern.compile("([0-9]{1,18})(?:\\.0+)?");
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,18}(?:\\.[0-9]{1,30})?");
    private static final Pattern FRACTION = Pattern.compile("-?[0-9]*\\.[0-9]+");
    private static final Pattern DIGITS = Pattern.compile("[0-9]+(?:\\.0+)?");
    private static final Pattern NEGATIVE = Pattern.compile("[-\u2212][0-9.]+");
    private static final Pattern GROUPED = Pattern.compile("[0-9]{1,3}(?:[.,' \u00a0][0-9]{3})+");
    private static final Pattern ISO =
            Pattern.compile("([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})(?:[T ][0-9:.]+)?");
    private static final Pattern DAY_AND_MONTH =
            Pattern.compile("([0-9]{1,2})[-/.]([0-9]{1,2})[-/.]([0-9]{4})");

    /** A cell read, or what is wrong with it. */
    public record Read<T>(Optional<T> value, Optional<FaultKind> fault, List<String> arguments) {

        static <T> Read<T> of(T value) {
            return new Read<>(Optional.of(value), Optional.empty(), List.of());
        }

        static <T> Read<T> fault(FaultKind kind, String... arguments) {
            return new Read<>(Optional.empty(), Optional.of(kind), List.of(arguments));
        }
    }

    /** Reads a count; blank is not read. */
    Read<CountCell> count(String text) {
        Optional<CountCell.State> state =
                Arrays.stream(CountCell.State.values())
                        .filter(s -> s.text().equalsIgnoreCase(text))
                        .findAny();
        if (text.isEmpty()) {
            return Read.of(new CountCell(CountCell.State.NOT_READ, 0));
        }
        if (state.isPresent()) {
            return Read.of(new CountCell(state.get(), 0));
        }
        Read<Long> whole = whole(text);
        return whole.value().isPresent()
                ? Read.of(CountCell.counted(whole.value().get()))
                : new Read<>(Optional.empty(), whole.fault(), whole.arguments());
    }

    /** Reads a whole number from 0 to {@link #LARGEST_COUNT}. */
    Read<Long> whole(String text) {
        if (isGrouped(text)) {
            return Read.fault(FaultKind.NUMBER_GROUPED, text.replaceAll("[^0-9]", ""));
        }
        String number = withPoint(text);
        Matcher whole = WHOLE.matcher(number);
        if (whole.matches()) {
            long value = Long.parseLong(whole.group(1));
            return value <= LARGEST_COUNT ? Read.of(value) : tooLarge();
        }
        if (DIGITS.matcher(number).matches()) {
            return tooLarge();
        }
        if (NEGATIVE.matcher(number).matches()) {
            return Read.fault(FaultKind.COUNT_NEGATIVE);
        }
        return FRACTION.matcher(number).matches()
                ? Read.fault(FaultKind.COUNT_NOT_WHOLE)
                : Read.fault(FaultKind.COUNT_NOT_A_NUMBER);
    }

    private static <T> Read<T> tooLarge() {
        return Read.fault(FaultKind.COUNT_TOO_LARGE);
    }

    /** Reads a number above 0, written without an exponent; empty if it is anything else. */
    OptionalDouble positive(String text) {
        String number = withPoint(text);
        if (isGrouped(text) || !DECIMAL.matcher(number).matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(number);
        return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** {@return whether it looks like 1,000 or 1.000, where nobody can say which is meant} */
    boolean isGrouped(String text) {
        boolean grouped = GROUPED.matcher(text).matches();
        return grouped && (decimalComma ? text.indexOf(',') < 0 : text.indexOf('.') < 0);
    }

    private String withPoint(String text) {
        return decimalComma ? text.replace(',', '.') : text;
    }

    /** Reads a day; 4/3/2026 could be two days and is not read. */
    public static Read<LocalDate> date(String text) {
        Matcher iso = ISO.matcher(text);
        if (iso.matches()) {
            return day(iso.group(1), iso.group(2), iso.group(3));
        }
        Matcher other = DAY_AND_MONTH.matcher(text);
        if (!other.matches()) {
            return Read.fault(FaultKind.DATE_UNREADABLE);
        }
        int first = Integer.parseInt(other.group(1));
        int second = Integer.parseInt(other.group(2));
        if (first > 12 || first == second) {
            return day(other.group(3), other.group(2), other.group(1));
        }
        if (second > 12) {
            return day(other.group(3), other.group(1), other.group(2));
        }
        String year = other.group(3);
        return Read.fault(
                FaultKind.DATE_AMBIGUOUS,
                LocalDate.of(Integer.parseInt(year), second, first).toString(),
                LocalDate.of(Integer.parseInt(year), first, second).toString());
    }

    private static Read<LocalDate> day(String year, String month, String day) {
        try {
            return Read.of(
                    LocalDate.of(
                            Integer.parseInt(year),
                            Integer.parseInt(month),
                            Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Read.fault(FaultKind.DATE_UNREADABLE);
        }
    }
}
