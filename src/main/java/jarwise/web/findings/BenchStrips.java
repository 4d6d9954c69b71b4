package jarwise.web.findings;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Strip;
import jarwise.render.chart.VerdictMarks;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Notes;
import jarwise.web.piece.Picture;
import jarwise.web.piece.StripRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The newest round of every bench and variety, as strips on one scale. */
public final class BenchStrips {

    private final Findings findings;
    private final FindingWords say;
    private final Words words;
    private final Strip desk;
    private final Strip phone;

    BenchStrips(Findings findings, FindingWords say) {
        // Taller than any row: the page cuts it off, and the line runs down the table.
        this(findings, say, Strip.Size.DESK.withHeight(130));
    }

    /** Strips of another size at the desk. */
    public BenchStrips(Findings findings, FindingWords say, Strip.Size atDesk) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
        var axis = TrendFigure.axis(findings, say.figures());
        this.desk = new Strip(axis, atDesk, Palette.DESK, words);
        this.phone = Strip.phone(axis, words);
    }

    /** {@return the strips; empty where nothing was sampled and nothing stands} */
    public Optional<FindingsView.Benches> benches() {
        if (findings.series().isEmpty() && findings.bare().isEmpty()) {
            return Optional.empty();
        }
        List<StripRow> rows = new ArrayList<>();
        findings.series().forEach(one -> rows.add(row(one.lastRead())));
        findings.bare().forEach(stand -> rows.add(bare(stand)));
        return Optional.of(
                new FindingsView.Benches(
                        title(),
                        sub(),
                        new Picture.Panel(desk.head(), phone.head()),
                        rows,
                        notes()));
    }

    private List<Finding> read() {
        return findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(finding -> finding.estimated().isPresent())
                .toList();
    }

    /** Never more than the verdict column allows. */
    private String title() {
        String when = when();
        List<String> above = places(Verdict.ABOVE_THE_LINE);
        List<Finding> read = read();
        if (read.stream().allMatch(finding -> finding.verdict().isEmpty())) {
            return words.say("findings.benches.plain", when);
        }
        if (!above.isEmpty()) {
            String which =
                    above.size() > 3
                            ? say.figures().counted("findings.benches", above.size())
                            : say.list(above);
            return words.say("findings.benches.above", when, which);
        }
        return places(Verdict.BELOW_THE_LINE).size() == read.size()
                ? words.say("findings.benches.below", when)
                : words.say("findings.benches.open", when);
    }

    private String when() {
        Set<LocalDate> days = read().stream().map(Finding::day).collect(Collectors.toSet());
        return days.size() == 1
                ? words.say("findings.benches.on", new Days(words).dayMonth(days.iterator().next()))
                : words.say("findings.benches.last");
    }

    private List<String> places(Verdict verdict) {
        return read().stream()
                .filter(finding -> finding.verdict().equals(Optional.of(verdict)))
                .map(finding -> say.shortPlace(finding.stand()))
                .toList();
    }

    private String sub() {
        return words.say(
                "findings.benches.sub", say.start(say.animals(findings.scope().subject())));
    }

    private StripRow row(Finding finding) {
        Interval interval = FindingWords.interval(finding);
        boolean read = finding.estimated().isPresent();
        return new StripRow(
                new StripRow.Lines(say.shortPlace(finding.stand()), under(finding)),
                read
                        ? new StripRow.Lines(
                                say.counted(finding.subject(), finding.evidence().individuals()),
                                say.inJars(finding.evidence()))
                        : new StripRow.Lines("–", say.inWords(finding)),
                density(finding),
                new Picture.Panel(
                        desk.row(interval, say.tip(finding)),
                        phone.row(interval, say.tip(finding))),
                mark(finding),
                new StripRow.Lines(say.verdict(finding), say.firmness(finding)),
                "");
    }

    private String under(Finding finding) {
        String variety =
                finding.stand().bench().isPresent()
                        ? finding.stand().variety().map(say::variety).orElse("")
                        : "";
        String day = new Days(words).brief(finding.day());
        boolean sameDay = read().stream().map(Finding::day).distinct().count() <= 1;
        return sameDay ? variety : variety.isEmpty() ? day : variety + ", " + day;
    }

    private StripRow.Lines density(Finding finding) {
        Interval interval = FindingWords.interval(finding);
        if (interval instanceof Interval.Found found) {
            return new StripRow.Lines(
                    say.figures().density(found.estimate()),
                    found.upper().isPresent()
                            ? say.figures().range(found.lower(), found.upper().getAsDouble())
                            : words.say("finding.or-more", say.figures().lower(found.lower())));
        }
        if (interval instanceof Interval.NoneFound none && none.upper().isPresent()) {
            double upper = none.upper().getAsDouble();
            return new StripRow.Lines(say.figures().below(upper), say.figures().fewerThan(upper));
        }
        return new StripRow.Lines(
                finding.estimated().isPresent() ? say.figures().interval(interval) : "–", "");
    }

    static String mark(Finding finding) {
        return finding.estimated().isEmpty()
                ? VerdictMarks.unknown(29, Palette.DESK)
                : finding.verdict().map(VerdictMarks::draw).orElse("");
    }

    private StripRow bare(Stand stand) {
        Interval interval = new Interval.NotSampled();
        String place = say.place(stand);
        String label = words.say("finding.tip.blank", place, words.say("figure.not-sampled"));
        return new StripRow(
                new StripRow.Lines(
                        say.shortPlace(stand), stand.variety().map(say::variety).orElse("")),
                new StripRow.Lines("–", say.figures().jars(0)),
                new StripRow.Lines("–", ""),
                new Picture.Panel(desk.row(interval, label), phone.row(interval, label)),
                VerdictMarks.unknown(29, Palette.DESK),
                new StripRow.Lines(words.say("figure.not-sampled"), ""),
                "");
    }

    private Notes notes() {
        List<Notes.Note> notes = new ArrayList<>();
        findings.rules()
                .lineOn(findings.scope().subject(), findings.scope().to())
                .ifPresentOrElse(
                        line ->
                                notes.add(
                                        Notes.Note.of(
                                                words.say("notes.line.title"),
                                                words.say(
                                                        "notes.line",
                                                        say.figures().plain(line.density()),
                                                        say.animals(findings.scope().subject()),
                                                        new Days(words).dated(line.setOn()),
                                                        line.setBy(),
                                                        line.reason()))),
                        () ->
                                notes.add(
                                        Notes.Note.of(
                                                words.say("notes.line.title"),
                                                words.say("notes.line.none"))));
        if (varietiesHaveOwnBenches()) {
            notes.add(
                    Notes.Note.of(
                            words.say("notes.confounded.title"), words.say("notes.confounded")));
        }
        return Notes.of(notes);
    }

    private boolean varietiesHaveOwnBenches() {
        List<Stand> stands =
                findings.series().stream()
                        .map(Findings.Series::stand)
                        .filter(stand -> stand.bench().isPresent() && stand.variety().isPresent())
                        .toList();
        long varieties = stands.stream().map(Stand::variety).distinct().count();
        return varieties > 1 && stands.size() == varieties;
    }
}
