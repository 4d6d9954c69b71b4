package jarwise.web.today;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding;
import jarwise.decision.Judgement;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.render.chart.Axis;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Strip;
import jarwise.render.chart.VerdictMarks;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Interval;
import jarwise.usecase.findings.Today;
import jarwise.web.Frame;
import jarwise.web.piece.Notes;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.StripRow;
import jarwise.web.piece.StripRow.Lines;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is known, as rows against each row's own line, in groups by verdict. */
final class KnownRows {

    /** Taller than any row: the page cuts it off. */
    private static final double ROW_HEIGHT = 130;

    private final Frame frame;
    private final FindingWords say;
    private final Strip desk;
    private final Strip phone;

    KnownRows(Frame frame, FindingWords say) {
        this.frame = frame;
        this.say = say;
        Axis axis = Axis.relativeToTheLine(say.figures());
        this.desk =
                new Strip(
                        axis, Strip.Size.DESK.withHeight(ROW_HEIGHT), Palette.DESK, frame.words());
        this.phone = Strip.phone(axis, frame.words());
    }

    Optional<TodayView.Known> known(Today today) {
        if (today.known().isEmpty() && today.bare().isEmpty()) {
            return Optional.empty();
        }
        List<TodayView.Group> groups = new ArrayList<>();
        for (Verdict verdict :
                List.of(Verdict.ABOVE_THE_LINE, Verdict.CANNOT_TELL, Verdict.BELOW_THE_LINE)) {
            List<StripRow> rows =
                    today.known().stream()
                            .filter(f -> f.verdict().equals(Optional.of(verdict)))
                            .map(this::row)
                            .toList();
            add(groups, VerdictMarks.draw(verdict), "today.group." + verdict, rows);
        }
        add(groups, VerdictMarks.unknown(29, Palette.DESK), "today.group.unknown", unknown(today));
        return Optional.of(
                new TodayView.Known(
                        title(today),
                        frame.say("today.known.lead"),
                        new Picture.Panel(desk.head(), phone.head()),
                        groups,
                        notes(today),
                        List.of(
                                new Reason(
                                        frame.say("today.why.title"),
                                        frame.say("today.why"),
                                        List.of(
                                                frame.say("why.zero"),
                                                frame.say("why.interval.more")),
                                        "above-threshold"))));
    }

    private void add(List<TodayView.Group> groups, String mark, String key, List<StripRow> rows) {
        if (!rows.isEmpty()) {
            String title = frame.say(key.toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            groups.add(new TodayView.Group(mark, title, rows));
        }
    }

    private String title(Today today) {
        long benches = today.known().stream().map(Finding::stand).distinct().count();
        String counted = say.figures().counted("findings.benches", benches + today.bare().size());
        return today.known().stream()
                .map(Finding::day)
                .max(Comparator.naturalOrder())
                .map(
                        day ->
                                frame.say(
                                        "today.known.title",
                                        counted,
                                        new Days(frame.words()).dayMonth(day)))
                .orElseGet(() -> frame.say("today.known.title.bare", counted));
    }

    private StripRow row(Finding finding) {
        double line = finding.judgement().orElseThrow().line().density();
        Interval relative = FindingWords.relative(finding, line);
        Verdict verdict = finding.verdict().orElseThrow();
        String address =
                switch (verdict) {
                    case ABOVE_THE_LINE -> frame.to("report") + Addresses.of(finding.subject());
                    case CANNOT_TELL -> frame.to("findings") + Addresses.of(finding);
                    case BELOW_THE_LINE -> "";
                };
        return new StripRow(
                new Lines(say.place(finding.stand()), about(finding, line)),
                new Lines("", ""),
                new Lines(say.inWords(finding), say.inFigures(finding)),
                strip(relative, say.tip(finding)),
                "",
                next(finding, verdict),
                address);
    }

    private String about(Finding finding, double line) {
        return frame.say(
                "today.known.about", say.subject(finding.subject()), say.figures().plain(line));
    }

    private Lines next(Finding finding, Verdict verdict) {
        Judgement judgement = finding.judgement().orElseThrow();
        return switch (verdict) {
            case ABOVE_THE_LINE -> new Lines(frame.say("today.next.decide"), say.firmness(finding));
            case CANNOT_TELL ->
                    new Lines(
                            say.moreJars(judgement),
                            judgement.moreSamples().isPresent()
                                    ? frame.say(
                                            "today.next.tell",
                                            say.figures().minutes(judgement.minutes()))
                                    : say.figures().likelyAbove(judgement.probabilityAbove()));
            case BELOW_THE_LINE ->
                    new Lines(frame.say("today.next.nothing"), say.firmness(finding));
        };
    }

    private Picture.Panel strip(Interval interval, String label) {
        return new Picture.Panel(desk.row(interval, label), phone.row(interval, label));
    }

    private List<StripRow> unknown(Today today) {
        List<StripRow> rows = new ArrayList<>();
        today.known().stream()
                .filter(finding -> finding.verdict().isEmpty())
                .forEach(
                        finding ->
                                rows.add(
                                        finding.notRead()
                                                ? unread(finding)
                                                : bare(finding.stand())));
        today.bare().forEach(stand -> rows.add(bare(stand)));
        return rows;
    }

    private StripRow unread(Finding finding) {
        String place = say.place(finding.stand());
        return new StripRow(
                new Lines(place, frame.say("today.known.every")),
                new Lines("", ""),
                new Lines(say.inWords(finding), frame.say("figure.not-read")),
                strip(FindingWords.interval(finding), say.tip(finding)),
                "",
                new Lines(frame.say("today.next.read"), ""),
                frame.to("samples") + "?day=" + finding.day());
    }

    private StripRow bare(Stand stand) {
        String place = say.place(stand);
        String not = frame.say("figure.not-sampled");
        return new StripRow(
                new Lines(place, frame.say("today.known.every")),
                new Lines("", ""),
                new Lines(say.figures().jars(0), not),
                strip(new Interval.NotSampled(), frame.say("finding.tip.blank", place, not)),
                "",
                new Lines(frame.say("today.next.cut"), ""),
                "");
    }

    private Notes notes(Today today) {
        Days days = new Days(frame.words());
        List<String> lines = lines(today, days);
        return Notes.of(
                List.of(
                        new Notes.Note(
                                frame.say("today.notes.lines"),
                                lines.isEmpty() ? List.of(frame.say("notes.line.none")) : lines),
                        Notes.Note.of(
                                frame.say("today.notes.eggs"),
                                frame.say("today.notes.eggs.text"))));
    }

    /** Who set them and when is said once where it is the same for all. */
    private List<String> lines(Today today, Days days) {
        LocalDate day = frame.now().toLocalDate();
        List<ActionThreshold> lines =
                today.rules().subjectsWithLine(day).stream()
                        .flatMap(subject -> today.rules().lineOn(subject, day).stream())
                        .toList();
        List<String> said = new ArrayList<>();
        boolean together =
                lines.stream().map(line -> line.setOn() + line.setBy()).distinct().count() == 1;
        for (ActionThreshold line : lines) {
            Finding.Subject subject = new Finding.Subject(line.pest(), line.stageGroup());
            String density = say.figures().plain(line.density());
            said.add(
                    together
                            ? frame.say(
                                    "today.notes.line", say.start(say.subject(subject)), density)
                            : frame.say(
                                    "today.notes.line.set",
                                    say.start(say.subject(subject)),
                                    density,
                                    days.dated(line.setOn()),
                                    line.setBy()));
        }
        if (together) {
            ActionThreshold first = lines.get(0);
            said.add(frame.say("today.notes.set", days.dated(first.setOn()), first.setBy()));
        }
        return said;
    }
}
