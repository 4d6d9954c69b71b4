package jarwise.web.report;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import jarwise.decision.Finding.Subject;
import jarwise.render.chart.Palette;
import jarwise.render.chart.SmallTrend;
import jarwise.render.chart.Strip;
import jarwise.render.chart.VerdictMarks;
import jarwise.render.finding.FindingWords;
import jarwise.render.report.Letter;
import jarwise.render.report.LetterPrinter;
import jarwise.render.report.Paper;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.WriteReport;
import jarwise.usecase.findings.SiteRules;
import jarwise.web.Frame;
import jarwise.web.Frames;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.Templates;
import jarwise.web.piece.Picture;
import jarwise.web.piece.StripRow;
import jarwise.web.piece.StripRow.Lines;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The letter: in the page, as one file of HTML, as PDF. */
public final class ReportPages implements Pages {

    /** Taller than any row: the page cuts it off. */
    private static final double ROW_HEIGHT = 130;

    private final Templates templates;
    private final Frames frames;
    private final WriteReport writeReport;
    private final LetterPrinter printer = new LetterPrinter();

    /** Answers with letters of {@code writeReport}. */
    public ReportPages(Server.Kit kit, WriteReport writeReport) {
        this.templates = kit.templates();
        this.frames = kit.frames();
        this.writeReport = writeReport;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/report", this::page);
        routes.get("/{nursery}/report.html", this::html);
        routes.get("/{nursery}/report.pdf", this::pdf);
    }

    private void page(Context http) {
        Frame frame = frames.ofSite(http, "report");
        SiteRules rules = rules(frame);
        Optional<Letter> letter = letter(http, frame, rules);
        if (letter.isEmpty()) {
            templates.answer(http, "report_empty.jte", Map.of("frame", frame));
            return;
        }
        ReportView view = view(http, frame, rules, letter.get());
        templates.answer(http, "report.jte", Map.of("frame", frame, "view", view));
    }

    private void html(Context http) {
        Letter letter = download(http, "text/html; charset=utf-8", "html");
        http.result(printer.html(letter));
    }

    private void pdf(Context http) {
        Paper paper = "letter".equals(http.queryParam("paper")) ? Paper.LETTER : Paper.A4;
        Letter letter = download(http, "application/pdf", "pdf");
        http.result(printer.pdf(letter, paper));
    }

    private Letter download(Context http, String type, String ending) {
        Frame frame = frames.ofSite(http, "report");
        Letter letter = letter(http, frame, rules(frame)).orElseThrow(NotFoundResponse::new);
        http.contentType(type);
        http.header(
                "Content-Disposition",
                "attachment; filename=\"letter-%s.%s\"".formatted(letter.head().day(), ending));
        http.header("Cache-Control", "no-store");
        return letter;
    }

    private Optional<Letter> letter(Context http, Frame frame, SiteRules rules) {
        return writeReport.run(
                new WriteReport.Request(
                        frame.nursery().orElseThrow(),
                        subject(http, rules),
                        frame.words().language(),
                        Optional.of(frame.person()).filter(code -> !code.isBlank()),
                        frame.now()));
    }

    private SiteRules rules(Frame frame) {
        return writeReport.findings().counts().rules(frame.nursery().orElseThrow().slug());
    }

    /** Animals that the site does not know give way to the usual ones. */
    private static Optional<Subject> subject(Context http, SiteRules rules) {
        Optional<String> stage = Optional.ofNullable(http.queryParam("stage"));
        return Optional.ofNullable(http.queryParam("pest"))
                .flatMap(rules.pests()::find)
                .flatMap(
                        pest ->
                                stage.filter(pest.stageGroups()::contains)
                                        .map(group -> new Subject(pest.code(), group)));
    }

    private static ReportView view(Context http, Frame frame, SiteRules rules, Letter letter) {
        Words words = frame.words();
        String number = Integer.toString(letter.head().number());
        String day = new Days(words).full(letter.head().day());
        SmallTrend small = new SmallTrend(letter.axis(), words);
        return new ReportView(
                letter,
                words.say("letter.title", number, day),
                words.say("letter.to", letter.head().to(), letter.head().from())
                        + " "
                        + letter.head().about(),
                places(letter, words),
                letter.goings().stream()
                        .map(going -> small.draw(going.trend(), going.happening(), true))
                        .toList(),
                choices(frame, rules, subject(http, rules)));
    }

    private static ReportView.Places places(Letter letter, Words words) {
        Strip.Size size = Strip.Size.DESK.withHeight(ROW_HEIGHT);
        Strip desk = new Strip(letter.axis(), size, Palette.DESK, words);
        Strip phone = Strip.phone(letter.axis(), words);
        return new ReportView.Places(
                new Picture.Panel(desk.head(), phone.head()),
                letter.rows().stream().map(row -> row(row, desk, phone)).toList());
    }

    private static StripRow row(Letter.Row row, Strip desk, Strip phone) {
        Words words = desk.words();
        String label = row.place() + ": " + row.found();
        return new StripRow(
                new Lines(row.place(), row.found()),
                new Lines(
                        row.verdict()
                                .map(verdict -> words.say(FindingWords.key(verdict)))
                                .orElseGet(() -> words.say("letter.no-verdict")),
                        row.sure()),
                new Lines(row.deed(), row.until()),
                new Picture.Panel(
                        desk.row(row.interval(), label), phone.row(row.interval(), label)),
                row.verdict()
                        .map(VerdictMarks::draw)
                        .orElseGet(() -> VerdictMarks.unknown(29, Palette.DESK)),
                new Lines("", ""),
                "");
    }

    private static List<ReportView.Choice> choices(
            Frame frame, SiteRules rules, Optional<Subject> asked) {
        FindingWords say = new FindingWords(frame.words(), rules.pests());
        Optional<Subject> chosen =
                asked.or(() -> ShowFindings.usual(rules, frame.now().toLocalDate()));
        return rules.subjectsWithLine(frame.now().toLocalDate()).stream()
                .map(
                        subject ->
                                new ReportView.Choice(
                                        say.start(say.subject(subject)),
                                        "?pest=%s&stage=%s"
                                                .formatted(
                                                        encoded(subject.pest()),
                                                        encoded(subject.stageGroup())),
                                        chosen.equals(Optional.of(subject))))
                .toList();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
