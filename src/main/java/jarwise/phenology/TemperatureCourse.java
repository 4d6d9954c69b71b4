package jarwise.phenology;

import jarwise.stats.thermal.TemperatureLimits;
import jarwise.stats.thermal.ThermalConstants;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The temperature as it went: stretches one after the other, with holes where nothing is known.
 *
 * @param spans at least one, in order, without overlap
 * @param gaps where the log has no reading, filled or left out
 */
public record TemperatureCourse(List<TemperatureSpan> spans, List<LogGap> gaps) {

    public TemperatureCourse {
        spans = List.copyOf(spans);
        gaps = List.copyOf(gaps);
    }

    /** {@return where it begins} */
    public LocalDateTime from() {
        return spans.get(0).from();
    }

    /** {@return where it ends} */
    public LocalDateTime to() {
        return spans.get(spans.size() - 1).to();
    }

    /** {@return degree-days of each day of which something is known, in order} */
    public List<DayDegreeDays> daily(TemperatureLimits limits) {
        Map<LocalDate, DayDegreeDays> days = new TreeMap<>();
        for (TemperatureSpan span : spans) {
            LocalDateTime start = span.from();
            while (start.isBefore(span.to())) {
                LocalDate day = start.toLocalDate();
                LocalDateTime midnight = day.plusDays(1).atStartOfDay();
                LocalDateTime end = midnight.isBefore(span.to()) ? midnight : span.to();
                DayDegreeDays part =
                        new DayDegreeDays(
                                day,
                                span.degreeDays(limits, start, end),
                                24 * TemperatureSpan.days(start, end));
                days.merge(day, part, TemperatureCourse::together);
                start = end;
            }
        }
        return List.copyOf(days.values());
    }

    private static DayDegreeDays together(DayDegreeDays a, DayDegreeDays b) {
        return new DayDegreeDays(a.day(), a.degreeDays() + b.degreeDays(), a.hours() + b.hours());
    }

    /** {@return mean temperature in °C of the stretches that reach past a moment} */
    public double meanSince(LocalDateTime moment) {
        double sum = 0;
        for (TemperatureSpan span : spans) {
            sum += span.to().isAfter(moment) ? span.mean() * span.days() : 0;
        }
        return sum / daysKnownSince(moment);
    }

    /** {@return how many days the stretches that reach past a moment last} */
    public double daysKnownSince(LocalDateTime moment) {
        return spans.stream()
                .filter(span -> span.to().isAfter(moment))
                .mapToDouble(TemperatureSpan::days)
                .sum();
    }

    /** {@return this course up to a moment, constant where nothing is known and after its end} */
    public TemperatureCourse assuming(double celsius, LocalDateTime until) {
        List<TemperatureSpan> whole = new ArrayList<>();
        LocalDateTime reached = from();
        for (TemperatureSpan span : spans) {
            if (span.from().isAfter(reached)) {
                whole.add(LineSpan.constant(reached, span.from(), celsius));
            }
            whole.add(span);
            reached = span.to();
        }
        if (until.isAfter(reached)) {
            whole.add(LineSpan.constant(reached, until, celsius));
        }
        return new TemperatureCourse(whole, gaps);
    }

    /** {@return the same course, so many degrees warmer all the time} */
    public TemperatureCourse warmedBy(double celsius) {
        return new TemperatureCourse(
                spans.stream().map(span -> span.warmedBy(celsius)).toList(), gaps);
    }

    /**
     * {@return when a development that begins at {@code start} is over, to the second; empty if
     * this course ends first}
     */
    public Optional<LocalDateTime> end(ThermalConstants development, LocalDateTime start) {
        TemperatureLimits limits = development.limits();
        double missing = development.degreeDays();
        for (TemperatureSpan span : spans) {
            if (span.to().isAfter(start)) {
                LocalDateTime from = span.from().isBefore(start) ? start : span.from();
                double brought = span.degreeDays(limits, from, span.to());
                if (brought >= missing) {
                    return Optional.of(moment(span, limits, from, missing));
                }
                missing -= brought;
            }
        }
        return Optional.empty();
    }

    /** The first whole second at which a stretch has brought so much. */
    private static LocalDateTime moment(
            TemperatureSpan span, TemperatureLimits limits, LocalDateTime from, double wanted) {
        long low = 0;
        long high = (long) Math.ceil(TemperatureSpan.days(from, span.to()) * 86_400);
        while (high - low > 1) {
            long middle = (low + high) / 2;
            boolean enough = span.degreeDays(limits, from, from.plusSeconds(middle)) >= wanted;
            low = enough ? low : middle;
            high = enough ? middle : high;
        }
        return from.plusSeconds(high);
    }
}
