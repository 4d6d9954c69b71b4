package jarwise.usecase.pattern;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * A round as a sheet names it: by day, by number or by a word, in the order of time.
 *
 * @param number its number, or its day counted from 1970; 0 for a word
 * @param text its name for people
 */
record RoundName(double number, String text) implements Comparable<RoundName> {

    private static final Comparator<RoundName> ORDER =
            Comparator.comparingDouble(RoundName::number).thenComparing(RoundName::text);

    static RoundName of(LocalDate day) {
        return new RoundName(day.toEpochDay(), day.toString());
    }

    static RoundName of(String text) {
        try {
            double number = Double.parseDouble(text);
            return new RoundName(Double.isFinite(number) ? number : 0, text);
        } catch (NumberFormatException e) {
            return new RoundName(0, text);
        }
    }

    @Override
    public int compareTo(RoundName other) {
        return ORDER.compare(this, other);
    }
}
