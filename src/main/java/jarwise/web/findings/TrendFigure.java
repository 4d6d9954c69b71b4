package jarwise.web.findings;

import jarwise.decision.Finding;
import jarwise.pest.LifeStage;
import jarwise.pest.StageMark;
import jarwise.render.chart.Axis;
import jarwise.render.chart.Trend;
import jarwise.render.chart.TrendChart;
import jarwise.render.finding.FindingWords;
import jarwise.render.finding.PlaceTrend;
import jarwise.render.finding.Turn;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Picture;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Rounds of each bench, strips stood on end, and the table behind them. */
final class TrendFigure {

    /** Benches drawn; all of them stand in the table. */
    private static final int MOST_PANELS = 4;

    private static final String NONE = "–";

    private final Findings findings;
    private final FindingWords say;
    private final Words words;
    private final Figures figures;
    private final ZoneId zone;
    private final Axis axis;

    TrendFigure(Findings findings, FindingWords say, ZoneId zone) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
        this.figures = say.figures();
        this.zone = zone;
        this.axis = axis(findings, figures);
    }

    /** {@return the scale that all strips of the page share} */
    static Axis axis(Findings findings, Figures figures) {
        double[] densities =
                findings.series().stream()
                        .flatMap(one -> one.rounds().stream())
                        .flatMap(finding -> finding.estimated().stream())
                        .mapToDouble(known -> known.density().estimate())
                        .filter(density -> density > 0)
                        .toArray();
        return findings.rules()
                .lineOn(findings.scope().subject(), findings.scope().to())
                .map(line -> Axis.density(line.density(), figures))
                .orElseGet(() -> Axis.density(0.006, 6, figures))
                .including(figures, densities);
    }

    Optional<FindingsView.Figure> figure() {
        if (findings.rounds().days().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new FindingsView.Figure(
                        title(),
                        sub(),
                        picture(),
                        new TrendTable(findings, say).table(),
                        new TrendNotes(findings, say).notes()));
    }

    /** Says "fell" or "rose" only where the limits of the two rounds do not meet. */
    private String title() {
        String animals = say.start(say.animals(findings.scope().subject()));
        if (findings.series().size() == 1) {
            Findings.Series only = findings.series().get(0);
            Optional<String> turn = Turn.of(only.rounds(), words);
            if (turn.isPresent()) {
                return words.say(
                        "findings.trend.turned", animals, say.shortPlace(only.stand()), turn.get());
            }
        }
        return words.say("findings.trend.title", animals);
    }

    private String sub() {
        boolean corrected =
                findings.series().stream()
                        .flatMap(one -> one.lastRead().estimated().stream())
                        .anyMatch(known -> !known.basis().detection().isComplete());
        String unit =
                words.say(
                        corrected ? "findings.trend.corrected" : "findings.trend.as-counted",
                        say.start(say.animals(findings.scope().subject())));
        String rounds =
                words.say(
                        findings.rounds().weeks()
                                ? "findings.trend.weeks"
                                : "findings.trend.rounds");
        return findings.series().size() > MOST_PANELS
                ? unit + " " + rounds + " " + words.say("findings.trend.most", MOST_PANELS)
                : unit + " " + rounds;
    }

    private Picture picture() {
        return new Picture(
                findings.series().stream()
                        .limit(MOST_PANELS)
                        .map(
                                series ->
                                        new Picture.Panel(
                                                TrendChart.desk(axis, words)
                                                        .draw(trend(series), label(series)),
                                                TrendChart.phone(axis, words)
                                                        .draw(trend(series), label(series))))
                        .toList());
    }

    /** {@return the picture of the most urgent bench, to be taken away} */
    Optional<String> drawing() {
        return findings.series().stream()
                .findFirst()
                .map(series -> TrendChart.desk(axis, words).draw(trend(series), label(series)));
    }

    private String label(Findings.Series series) {
        return words.say(
                "findings.trend.label",
                say.subject(findings.scope().subject()),
                say.place(series.stand()),
                figures.counted("findings.rounds", findings.rounds().days().size()));
    }

    private Trend trend(Findings.Series series) {
        return new PlaceTrend(say, zone, findings.rounds().days())
                .of(
                        series.stand(),
                        series.rounds(),
                        series.treatments(),
                        mark(),
                        rows(series, byDay(series)));
    }

    /** {@return treatments of the only bench shown; of several benches they would be mixed up} */
    List<Trend.Treatment> treatments() {
        return findings.series().size() == 1
                ? trend(findings.series().get(0)).treatments()
                : List.of();
    }

    /** The mark of the whole group: of its last stage, which is the full one. */
    private Optional<StageMark> mark() {
        return findings.rules()
                .pests()
                .find(findings.scope().subject().pest())
                .map(pest -> pest.stagesIn(findings.scope().subject().stageGroup()))
                .filter(stages -> !stages.isEmpty())
                .map(stages -> stages.get(stages.size() - 1))
                .map(LifeStage::mark);
    }

    private List<Trend.Row> rows(Findings.Series series, Map<LocalDate, Finding> byDay) {
        List<Trend.Row> rows = new ArrayList<>();
        rows.add(
                row(
                        "findings.row.jars",
                        false,
                        byDay,
                        finding -> figures.whole(finding.evidence().samples())));
        rows.add(
                row(
                        "findings.row.found",
                        true,
                        byDay,
                        finding ->
                                finding.estimated().isEmpty()
                                        ? NONE
                                        : figures.whole(finding.evidence().individuals())));
        if (!series.taps().isEmpty()) {
            rows.add(
                    row(
                            "findings.row.taps",
                            false,
                            series.taps(),
                            taps -> figures.whole(taps.individuals())));
        }
        return rows;
    }

    private <T> Trend.Row row(
            String key, boolean strong, Map<LocalDate, T> there, Function<T, String> text) {
        return new Trend.Row(
                words.say(key, say.animals(findings.scope().subject())),
                words.say(key + ".brief"),
                strong,
                findings.rounds().days().stream()
                        .map(day -> Optional.ofNullable(there.get(day)).map(text).orElse(NONE))
                        .toList());
    }

    private static Map<LocalDate, Finding> byDay(Findings.Series series) {
        Map<LocalDate, Finding> byDay = new HashMap<>();
        series.rounds().forEach(finding -> byDay.put(finding.day(), finding));
        return byDay;
    }
}
