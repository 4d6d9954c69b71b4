package jarwise.cli.climate;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.phenology.DayDegreeDays;
import jarwise.phenology.DegreeDayMethod;
import jarwise.phenology.LogGap;
import jarwise.phenology.ReadingLog;
import jarwise.usecase.climate.SumDegreeDays.Sum;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;

/** Degree-days as an answer of the command line. */
final class DegreeDaysAnswer {

    private DegreeDaysAnswer() {}

    static Answer of(Sum sum) {
        List<JsonObject> days = sum.days().stream().map(DegreeDaysAnswer::day).toList();
        boolean daily = !(sum.climate().log() instanceof ReadingLog);
        List<JsonObject> gaps = sum.course().gaps().stream().map(gap -> gap(gap, daily)).toList();
        JsonObject json =
                new JsonObject()
                        .put("total", sum.total())
                        .put("method", sum.method().text())
                        .putObjects("days", days)
                        .putObjects("gaps", gaps);
        return new Answer(json, days, text(sum), warnings(sum));
    }

    private static JsonObject day(DayDegreeDays day) {
        return new JsonObject()
                .put("date", day.day().toString())
                .put("degreeDays", day.degreeDays())
                .put("hours", day.hours());
    }

    /** In a log of days a gap goes from the first to the last day missing. */
    private static JsonObject gap(LogGap gap, boolean daily) {
        return new JsonObject()
                .put("from", daily ? gap.from().toLocalDate().toString() : gap.from().toString())
                .put(
                        "to",
                        daily
                                ? gap.to().toLocalDate().minusDays(1).toString()
                                : gap.to().toString())
                .put("filled", gap.filled());
    }

    private static List<String> warnings(Sum sum) {
        List<String> warnings = new ArrayList<>(LogWarnings.of(sum.climate()));
        warnings.addAll(LogWarnings.gaps(sum.course().gaps()));
        if (sum.daysLeftOut() > 0) {
            warnings.add(
                    ("%d day(s) were left out: %s needs readings all day long, with no hole of more"
                                    + " than 6 hours.")
                            .formatted(sum.daysLeftOut(), sum.method().text()));
        }
        long partly = sum.days().stream().filter(day -> day.hours() < 23.999).count();
        if (sum.method() == DegreeDayMethod.HOURLY && partly > 0) {
            warnings.add(
                    "%d day(s) are only partly in the log; what is missing is not counted."
                            .formatted(partly));
        }
        return warnings;
    }

    private static String text(Sum sum) {
        TextTable table = new TextTable(1, List.of("day", "degree-days", "hours known"));
        sum.days()
                .forEach(
                        day ->
                                table.add(
                                        List.of(
                                                day.day().toString(),
                                                Figures.of(day.degreeDays()),
                                                Figures.of(day.hours()))));
        int days = sum.days().size();
        return table.text()
                + "\n%s degree-days (°C·d) came together from %s to %s, by the %s method.\n"
                        .formatted(
                                Figures.of(sum.total()),
                                sum.days().get(0).day(),
                                sum.days().get(days - 1).day(),
                                sum.method().text());
    }
}
