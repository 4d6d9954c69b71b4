package jarwise.web.findings;

import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The table behind the trend: every round of every bench, in figures. */
final class TrendTable {

    private static final List<String> COLUMNS =
            List.of(
                    "place",
                    "day",
                    "jars",
                    "units",
                    "counted",
                    "apparent",
                    "density",
                    "verdict",
                    "taps");

    private final Findings findings;
    private final FindingWords say;
    private final Words words;
    private final Figures figures;

    TrendTable(Findings findings, FindingWords say) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
        this.figures = say.figures();
    }

    Table table() {
        List<List<String>> rows = new ArrayList<>();
        for (Findings.Series series : findings.series()) {
            for (Finding finding : series.rounds()) {
                rows.add(row(series, finding));
            }
        }
        return new Table(
                words.say("findings.table.caption", say.subject(findings.scope().subject())),
                COLUMNS.stream().map(column -> words.say("findings.table." + column)).toList(),
                rows);
    }

    private List<String> row(Findings.Series series, Finding finding) {
        boolean read = finding.estimated().isPresent();
        return List.of(
                say.place(finding.stand()),
                new Days(words).dated(finding.day()),
                figures.whole(finding.evidence().samples()),
                read ? figures.plain(finding.evidence().samplingUnits()) : "–",
                read ? figures.whole(finding.evidence().individuals()) : "–",
                read ? figures.density(finding.evidence().countedDensity()) : "–",
                figures.interval(FindingWords.interval(finding)),
                say.verdict(finding),
                Optional.ofNullable(series.taps().get(finding.day()))
                        .map(
                                taps ->
                                        words.say(
                                                "findings.table.taps.of",
                                                figures.whole(taps.individuals()),
                                                figures.plain(taps.taps())))
                        .orElse("–"));
    }
}
