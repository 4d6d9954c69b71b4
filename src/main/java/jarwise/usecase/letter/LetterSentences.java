package jarwise.usecase.letter;

import jarwise.decision.Basis;
import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.render.finding.Turn;
import jarwise.render.report.Letter.Paragraph;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.findings.Findings;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Paragraphs of the letter: what happened, how sure, what must not be done.
 *
 * @param say the language
 * @param zone in which the site's clocks run
 */
public record LetterSentences(FindingWords say, ZoneId zone) {

    /** {@return what rose or fell beyond doubt, what was applied, what was not to protocol} */
    public List<Paragraph> paragraphs(Findings findings) {
        List<Paragraph> paragraphs = new ArrayList<>();
        for (Findings.Series series : findings.series()) {
            Turn.of(series.rounds(), words())
                    .ifPresent(
                            turn ->
                                    paragraphs.add(
                                            new Paragraph(
                                                    say.place(series.stand()),
                                                    words().say("letter.turn", turn))));
        }
        findings.series().stream()
                .filter(series -> !series.treatments().isEmpty())
                .forEach(series -> paragraphs.add(applied(series)));
        if (!findings.targeted().isEmpty()) {
            paragraphs.add(
                    new Paragraph(
                            words().say("letter.targeted"),
                            figures().counted("letter.targeted.text", findings.targeted().size())));
        }
        return paragraphs;
    }

    private Paragraph applied(Findings.Series series) {
        Days days = new Days(words());
        String uses =
                series.treatments().stream()
                        .map(
                                application ->
                                        words().say(
                                                        "letter.applied.use",
                                                        products(application),
                                                        days.dayMonth(
                                                                local(application.started())
                                                                        .toLocalDate())))
                        .collect(Collectors.joining("; "));
        return new Paragraph(
                words().say("letter.applied", say.shortPlace(series.stand())),
                words().say("letter.applied.text", uses));
    }

    private static String products(Application application) {
        return application.products().stream()
                .map(ProductUse::product)
                .collect(Collectors.joining(" + "));
    }

    /** {@return what was allowed for, and what would change the answer} */
    public String howSure(Findings findings) {
        return findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(finding -> finding.estimated().isPresent())
                .findFirst()
                .map(first -> shares(first) + low(findings))
                .orElse("");
    }

    private String shares(Finding first) {
        Basis basis = first.estimated().orElseThrow().basis();
        String extraction =
                basis.efficiencyMeasured()
                        ? words().say(
                                        "why.efficiency",
                                        percent(basis.detection().efficiency().mean()),
                                        say.animals(first.subject()))
                        : words().say("why.efficiency.none");
        String reader =
                basis.sensitivityMeasured()
                        ? words().say(
                                        "why.sensitivity",
                                        percent(basis.detection().sensitivity().mean()))
                        : words().say("why.sensitivity.none");
        return extraction + " " + reader;
    }

    private String percent(double share) {
        return figures().percent(Math.round(share * 100) / 100.0);
    }

    /** The first place whose verdict would be another one if only a quarter came off. */
    private String low(Findings findings) {
        return findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(
                        finding -> {
                            Finding low = findings.lowExtraction().get(finding.stand());
                            return low != null && !low.verdict().equals(finding.verdict());
                        })
                .findFirst()
                .map(
                        finding ->
                                " "
                                        + words().say(
                                                        "letter.low",
                                                        figures().percent(Findings.LOW_EXTRACTION),
                                                        say.shortPlace(finding.stand()),
                                                        say.verdict(low(findings, finding))))
                .orElse("");
    }

    private static Finding low(Findings findings, Finding finding) {
        return java.util.Objects.requireNonNull(findings.lowExtraction().get(finding.stand()));
    }

    /** {@return every place that may not be entered yet} */
    public List<Paragraph> warnings(List<Application> applications, Instant now) {
        return applications.stream()
                .filter(application -> !application.mayBeEntered(now))
                .map(this::warning)
                .toList();
    }

    private Paragraph warning(Application application) {
        String where =
                application.benches().isEmpty()
                        ? application.house()
                        : say.list(List.copyOf(application.benches()));
        String lead =
                application
                        .reentryEnds()
                        .map(end -> words().say("letter.no-entry", where, moment(end)))
                        .orElseGet(() -> words().say("letter.no-entry.open", where));
        String key = "letter.no-entry.text" + (application.ended().isPresent() ? "" : ".open");
        Instant at = application.ended().orElse(application.started());
        return new Paragraph(lead, words().say(key, products(application), moment(at)));
    }

    private String moment(Instant at) {
        Days days = new Days(words());
        ZonedDateTime local = local(at);
        return days.weekday(local.toLocalDate()) + ", " + days.time(local.toLocalTime());
    }

    private ZonedDateTime local(Instant at) {
        return at.atZone(zone);
    }

    /** {@return "SC-1 (24 filters) and SC-2 (10 filters)"} */
    public String readers(Map<String, Integer> filtersByReader) {
        return say.list(
                new TreeMap<>(filtersByReader)
                        .entrySet().stream()
                                .map(
                                        reader ->
                                                words().say(
                                                                "letter.reader",
                                                                reader.getKey(),
                                                                figures()
                                                                        .counted(
                                                                                "today.filters",
                                                                                reader.getValue())))
                                .toList());
    }

    private Figures figures() {
        return say.figures();
    }

    private Words words() {
        return say.words();
    }
}
