package jarwise.usecase;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.plan.Round;
import jarwise.render.chart.Axis;
import jarwise.render.finding.FindingWords;
import jarwise.render.finding.PlaceTrend;
import jarwise.render.report.Letter;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.site.Nursery;
import jarwise.store.work.RoundStore;
import jarwise.treatment.Application;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.letter.LetterRows;
import jarwise.usecase.letter.LetterSentences;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes the grower's letter: one page about one kind of animal.
 *
 * @param findings what is known
 * @param rounds planned rounds
 */
public record WriteReport(ShowFindings findings, RoundStore rounds) {

    private static final int DAYS_AHEAD = 14;
    private static final Duration RECENT = Duration.ofDays(7);
    private static final Duration LEDGER = Duration.ofDays(30);
    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    /**
     * What is asked for.
     *
     * @param nursery the site
     * @param subject which animals; empty for the first one with a line
     * @param language of the letter
     * @param from role code of the writer; empty for whoever read most filters
     * @param now moment of the letter, in the site's time zone
     */
    public record Request(
            Nursery nursery,
            Optional<Subject> subject,
            Language language,
            Optional<String> from,
            ZonedDateTime now) {}

    /** {@return the letter; empty where nothing was ever cut, or no pest can be counted} */
    public Optional<Letter> run(Request request) {
        String slug = request.nursery().slug();
        SiteRules rules = findings.counts().rules(slug);
        LocalDate day = request.now().toLocalDate();
        Optional<LocalDate> last = findings.counts().lastDay(slug);
        Optional<Subject> subject = request.subject().or(() -> ShowFindings.usual(rules, day));
        if (last.isEmpty() || subject.isEmpty()) {
            return Optional.empty();
        }
        LocalDate to = last.get().isAfter(day) ? day : last.get();
        Scope scope =
                new Scope(
                        subject.get(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        to.minusDays(ShowFindings.USUAL_DAYS),
                        to);
        Findings found = findings.run(slug, request.nursery().zone(), rules, scope);
        return found.sampled() ? Optional.of(letter(request, found)) : Optional.empty();
    }

    private Letter letter(Request request, Findings found) {
        Words words = Words.of(request.language());
        FindingWords say = new FindingWords(words, found.rules().pests());
        LetterSentences sentences = new LetterSentences(say, request.nursery().zone());
        LetterRows rows = new LetterRows(say, nextRound(request));
        // Where only targeted jars were cut there is nothing to say of a density.
        List<Finding> latest =
                found.series().stream()
                        .map(Findings.Series::lastRead)
                        .filter(finding -> finding.estimated().isPresent() || finding.notRead())
                        .toList();
        Instant now = request.now().toInstant();
        List<Application> applications =
                findings.treatments()
                        .applications(request.nursery().slug(), now.minus(LEDGER), now);
        Map<String, Integer> readers = readers(request, found);
        return new Letter(
                request.language(),
                head(request, found, say, readers),
                rows.answer(latest),
                words.say("letter.unit", say.start(say.animals(found.scope().subject()))),
                axis(found, say.figures()),
                line(found, say),
                rows.rows(latest),
                goings(request, found, say),
                sentences.paragraphs(found),
                sentences.howSure(found),
                sentences.warnings(applications, now),
                applications.stream().anyMatch(a -> a.started().isAfter(now.minus(RECENT))),
                readers.isEmpty() ? "" : words.say("letter.counted", sentences.readers(readers)));
    }

    private Letter.Head head(
            Request request, Findings found, FindingWords say, Map<String, Integer> readers) {
        String to =
                found.rules()
                        .lineOn(found.scope().subject(), found.scope().to())
                        .map(ActionThreshold::setBy)
                        .filter(code -> !code.isBlank())
                        .orElseGet(() -> say.words().say("letter.grower"));
        String from =
                request.from()
                        .orElseGet(
                                () ->
                                        readers.entrySet().stream()
                                                .max(Map.Entry.comparingByValue())
                                                .map(Map.Entry::getKey)
                                                .orElseGet(() -> say.words().say("letter.scout")));
        return new Letter.Head(
                request.nursery().name(),
                found.rounds().days().size(),
                request.now().toLocalDate(),
                to,
                from,
                about(request, found, say));
    }

    private String about(Request request, Findings found, FindingWords say) {
        LocalDate newest = found.scope().to();
        List<CollectedSample> jars = jars(request, newest);
        long read = jars.stream().filter(jar -> READ.contains(jar.state())).count();
        return say.words()
                .say(
                        "letter.about",
                        say.start(say.pest(found.scope().subject().pest())),
                        new Days(say.words()).dayMonth(lastCut(jars).orElse(newest)),
                        say.figures().whole(read),
                        say.figures().jars(jars.size()));
    }

    private static Optional<LocalDate> lastCut(List<CollectedSample> jars) {
        return jars.stream().flatMap(jar -> jar.collectedOn().stream()).max(LocalDate::compareTo);
    }

    /** Jars of the newest round: of the last day on which jars were cut. */
    private List<CollectedSample> jars(Request request, LocalDate to) {
        List<CollectedSample> all =
                findings.counts()
                        .cropSamples(
                                request.nursery().slug(),
                                SamplingMethod.WASH,
                                to.minusDays(ShowFindings.USUAL_DAYS),
                                to);
        Optional<LocalDate> newest = lastCut(all);
        return all.stream().filter(jar -> jar.collectedOn().equals(newest)).toList();
    }

    private Map<String, Integer> readers(Request request, Findings found) {
        return jars(request, found.scope().to()).stream()
                .filter(jar -> READ.contains(jar.state()))
                .flatMap(jar -> jar.reading().reader().stream())
                .collect(Collectors.toMap(reader -> reader, reader -> 1, Integer::sum));
    }

    private Optional<LocalDate> nextRound(Request request) {
        LocalDate day = request.now().toLocalDate();
        return rounds
                .rounds(request.nursery().slug(), day.plusDays(1), day.plusDays(DAYS_AHEAD))
                .stream()
                .filter(round -> round.method() == SamplingMethod.WASH)
                .map(Round::day)
                .min(LocalDate::compareTo);
    }

    private static Axis axis(Findings found, Figures figures) {
        double[] densities =
                found.series().stream()
                        .flatMap(one -> one.rounds().stream())
                        .flatMap(finding -> finding.estimated().stream())
                        .mapToDouble(known -> known.density().estimate())
                        .filter(density -> density > 0)
                        .toArray();
        return found.rules()
                .lineOn(found.scope().subject(), found.scope().to())
                .map(line -> Axis.density(line.density(), figures))
                .orElseGet(() -> Axis.density(0.006, 6, figures))
                .including(figures, densities);
    }

    private static String line(Findings found, FindingWords say) {
        Words words = say.words();
        return found.rules()
                .lineOn(found.scope().subject(), found.scope().to())
                .map(
                        line ->
                                words.say(
                                        "letter.line",
                                        say.figures().plain(line.density()),
                                        say.animals(found.scope().subject()),
                                        say.figures().exactly(line.density()),
                                        new Days(words).dated(line.setOn())))
                .orElseGet(() -> words.say("letter.line.none"));
    }

    private static List<Letter.Going> goings(Request request, Findings found, FindingWords say) {
        PlaceTrend trend = new PlaceTrend(say, request.nursery().zone(), found.rounds().days());
        return found.series().stream()
                .limit(3)
                .map(
                        one ->
                                new Letter.Going(
                                        trend.of(
                                                one.stand(),
                                                one.rounds(),
                                                one.treatments(),
                                                Optional.empty(),
                                                List.of()),
                                        Optional.empty()))
                .toList();
    }
}
