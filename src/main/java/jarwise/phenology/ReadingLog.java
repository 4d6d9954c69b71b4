package jarwise.phenology;

import jarwise.base.InvalidInput;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Readings of a logger.
 *
 * @param readings at least two, in order of time, each time once
 */
public record ReadingLog(List<LoggedTemperature> readings) implements TemperatureLog {

    private static final double JUMP = 15;
    private static final Duration STUCK = Duration.ofHours(24);

    public ReadingLog {
        readings = List.copyOf(readings);
        if (readings.size() < 2) {
            throw new InvalidInput(
                    "The log has one reading; two or more are needed to know how long it was warm."
                            + " Maybe the log was cut off.");
        }
    }

    @Override
    public DegreeDayMethod usualMethod() {
        return DegreeDayMethod.HOURLY;
    }

    @Override
    public TemperatureCourse course(DegreeDayMethod method) {
        return method == DegreeDayMethod.HOURLY ? lines() : DayRanges.of(readings).course(method);
    }

    private TemperatureCourse lines() {
        List<TemperatureSpan> spans = new ArrayList<>();
        List<LogGap> gaps = new ArrayList<>();
        for (int i = 1; i < readings.size(); i++) {
            LoggedTemperature a = readings.get(i - 1);
            LoggedTemperature b = readings.get(i);
            Duration apart = Duration.between(a.at(), b.at());
            boolean known = apart.compareTo(LogGap.LONGEST_FILLED) <= 0;
            if (known) {
                spans.add(new LineSpan(a.at(), b.at(), a.celsius(), b.celsius()));
            }
            if (apart.compareTo(LogGap.TOLD) > 0) {
                gaps.add(new LogGap(a.at(), b.at(), known));
            }
        }
        if (spans.isEmpty()) {
            throw new InvalidInput(
                    "No two readings of the log are within 6 hours; hourly readings are needed."
                            + " Maybe give each day's date,min,max instead.");
        }
        return new TemperatureCourse(spans, gaps);
    }

    @Override
    public List<SensorDoubt> doubts() {
        List<SensorDoubt> doubts = new ArrayList<>();
        LoggedTemperature since = readings.get(0);
        LoggedTemperature before = since;
        for (LoggedTemperature reading : readings) {
            if (reading.celsius() != since.celsius()) {
                addIfStuck(doubts, since, before.at());
                since = reading;
            }
            double hours = 24 * TemperatureSpan.days(before.at(), reading.at());
            double jump = reading.celsius() - before.celsius();
            if (Math.abs(jump) > JUMP * Math.max(1, hours)) {
                doubts.add(new SensorDoubt(SensorDoubt.Kind.JUMP, before.at(), reading.at(), jump));
            }
            before = reading;
        }
        addIfStuck(doubts, since, before.at());
        return doubts;
    }

    private static void addIfStuck(
            List<SensorDoubt> doubts, LoggedTemperature since, LocalDateTime to) {
        if (Duration.between(since.at(), to).compareTo(STUCK) > 0) {
            doubts.add(new SensorDoubt(SensorDoubt.Kind.STUCK, since.at(), to, since.celsius()));
        }
    }

    @Override
    public int daysRead() {
        return (int) readings.stream().map(r -> r.at().toLocalDate()).distinct().count();
    }

    @Override
    public double highest() {
        return readings.stream().mapToDouble(LoggedTemperature::celsius).max().orElseThrow();
    }
}
