package jarwise.render.chart;

import jarwise.render.words.Days;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Days on a line: rounds stand where their day is, treatments between them by the hour. */
record TimeAxis(List<LocalDate> days, double start, double end) {

    double at(LocalDate day) {
        return at(day.atStartOfDay());
    }

    double at(LocalDateTime moment) {
        double whole = ChronoUnit.DAYS.between(first(), last());
        if (whole == 0) {
            return (start + end) / 2;
        }
        double hours = Duration.between(first().atStartOfDay(), moment).toMinutes() / 60.0;
        return start + (end - start) * hours / 24 / whole;
    }

    LocalDate first() {
        return days.get(0);
    }

    LocalDate last() {
        return days.get(days.size() - 1);
    }

    /** Distance of the two rounds that stand closest. */
    double step() {
        double least = end - start;
        for (int i = 1; i < days.size(); i++) {
            least = Math.min(least, at(days.get(i)) - at(days.get(i - 1)));
        }
        return least;
    }

    /** Rounds that have room for a label of this width, counted back from the last one. */
    List<Integer> labelled(double room) {
        List<Integer> chosen = new ArrayList<>();
        double next = Double.POSITIVE_INFINITY;
        for (int i = days.size() - 1; i >= 0; i--) {
            double x = at(days.get(i));
            if (x <= next) {
                chosen.add(0, i);
                next = x - room;
            }
        }
        return chosen;
    }

    /** {@return "2 Mar" where the month is new, "9" where it is not} */
    String label(List<Integer> labelled, int position, Days words) {
        LocalDate day = days.get(labelled.get(position));
        boolean sameMonth =
                position > 0 && days.get(labelled.get(position - 1)).getMonth() == day.getMonth();
        return sameMonth ? Integer.toString(day.getDayOfMonth()) : words.brief(day);
    }
}
