package jarwise.render.finding;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.pest.StageMark;
import jarwise.render.chart.Trend;
import jarwise.render.words.Days;
import jarwise.render.words.Interval;
import jarwise.treatment.Application;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The rounds of one place as a trend.
 *
 * @param say the language
 * @param zone in which the site's clocks run
 * @param days every round that is shown, in order
 */
public record PlaceTrend(FindingWords say, ZoneId zone, List<LocalDate> days) {

    /**
     * Puts the rounds of a place in order.
     *
     * @param stand the place
     * @param findings its rounds; a day without one was not sampled
     * @param treatments what was done there, on any day
     * @param mark mark of the stage; empty for points in ink
     * @param rows numbers under the dates
     */
    public Trend of(
            Stand stand,
            List<Finding> findings,
            List<Application> treatments,
            Optional<StageMark> mark,
            List<Trend.Row> rows) {
        Map<LocalDate, Finding> byDay = new HashMap<>();
        findings.forEach(finding -> byDay.put(finding.day(), finding));
        return new Trend(
                say.shortPlace(stand),
                stand.bench().isPresent() ? stand.variety().map(say::variety).orElse("") : "",
                mark,
                days.stream().map(day -> round(day, Optional.ofNullable(byDay.get(day)))).toList(),
                treatments.stream().filter(this::inside).map(this::treatment).toList(),
                rows);
    }

    private boolean inside(Application application) {
        LocalDate day = application.started().atZone(zone).toLocalDate();
        return !day.isBefore(days.get(0)) && !day.isAfter(days.get(days.size() - 1));
    }

    private Trend.Treatment treatment(Application application) {
        String group =
                application.products().stream()
                        .flatMap(use -> use.modeOfActionGroups().stream())
                        .distinct()
                        .collect(Collectors.joining(" + "));
        return new Trend.Treatment(application.started().atZone(zone).toLocalDateTime(), group);
    }

    private Trend.Round round(LocalDate day, Optional<Finding> there) {
        String brief = new Days(say.words()).brief(day);
        return there.map(
                        finding ->
                                new Trend.Round(
                                        day,
                                        FindingWords.interval(finding),
                                        say.words()
                                                .say(
                                                        "findings.trend.tip",
                                                        brief,
                                                        say.tip(finding))))
                .orElseGet(() -> new Trend.Round(day, new Interval.NotSampled(), brief));
    }
}
