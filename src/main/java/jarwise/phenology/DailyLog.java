package jarwise.phenology;

import jarwise.base.InvalidInput;
import jarwise.stats.thermal.DailySine;
import java.util.ArrayList;
import java.util.List;

/**
 * Lowest and highest temperature of each day.
 *
 * @param days at least one, in order, each day once
 */
public record DailyLog(List<DailyRange> days) implements TemperatureLog {

    public DailyLog {
        days = List.copyOf(days);
        if (days.isEmpty()) {
            throw new InvalidInput(
                    "The log has no whole day; each day needs readings all day long."
                            + " Maybe --method hourly.");
        }
    }

    @Override
    public DegreeDayMethod usualMethod() {
        return DegreeDayMethod.SINGLE_SINE;
    }

    @Override
    public TemperatureCourse course(DegreeDayMethod method) {
        if (method == DegreeDayMethod.HOURLY) {
            throw new InvalidInput(
                    "--method is hourly, but the log has one lowest and highest temperature a day;"
                            + " single-sine and average are allowed. Maybe --method single-sine.");
        }
        return new TemperatureCourse(
                days.stream().map(day -> span(day, method)).toList(), missingDays());
    }

    private static TemperatureSpan span(DailyRange range, DegreeDayMethod method) {
        DailySine sine = new DailySine(range.lowest(), range.highest());
        SineSpan span = new SineSpan(range.day(), sine);
        return method == DegreeDayMethod.SINGLE_SINE
                ? span
                : LineSpan.constant(span.from(), span.to(), sine.mean());
    }

    private List<LogGap> missingDays() {
        List<LogGap> gaps = new ArrayList<>();
        for (int i = 1; i < days.size(); i++) {
            DailyRange before = days.get(i - 1);
            DailyRange after = days.get(i);
            if (before.day().plusDays(1).isBefore(after.day())) {
                gaps.add(
                        new LogGap(
                                before.day().plusDays(1).atStartOfDay(),
                                after.day().atStartOfDay(),
                                false));
            }
        }
        return gaps;
    }

    @Override
    public List<SensorDoubt> doubts() {
        List<SensorDoubt> doubts = new ArrayList<>();
        for (DailyRange range : days) {
            if (range.lowest() == range.highest()) {
                doubts.add(
                        new SensorDoubt(
                                SensorDoubt.Kind.STUCK,
                                range.day().atStartOfDay(),
                                range.day().plusDays(1).atStartOfDay(),
                                range.lowest()));
            }
        }
        return doubts;
    }

    @Override
    public int daysRead() {
        return days.size();
    }

    @Override
    public double highest() {
        return days.stream().mapToDouble(DailyRange::highest).max().orElseThrow();
    }
}
