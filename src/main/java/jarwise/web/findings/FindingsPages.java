package jarwise.web.findings;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.site.Nursery;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteRules;
import jarwise.web.Frame;
import jarwise.web.Frames;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.Templates;
import jarwise.web.piece.Table;
import jarwise.wire.findings.FindingsCsv;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings, their sheet and their picture. */
public final class FindingsPages implements Pages {

    private final Templates templates;
    private final Frames frames;
    private final ShowFindings showFindings;

    /** Answers with what {@code showFindings} finds. */
    public FindingsPages(Server.Kit kit, ShowFindings showFindings) {
        this.templates = kit.templates();
        this.frames = kit.frames();
        this.showFindings = showFindings;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/findings", this::page);
        routes.get("/{nursery}/findings.csv", this::csv);
        routes.get("/{nursery}/findings.svg", this::svg);
    }

    private void page(Context http) {
        Frame frame = frames.ofSite(http, "findings");
        FindingsView view =
                find(http, frame)
                        .map(findings -> view(http, frame, findings))
                        .orElseGet(() -> empty(frame));
        templates.answer(http, "findings.jte", Map.of("frame", frame, "view", view));
    }

    private void csv(Context http) {
        Frame frame = frames.ofSite(http, "findings");
        List<Finding> rows =
                find(http, frame)
                        .map(findings -> findings.series().stream())
                        .orElseGet(java.util.stream.Stream::empty)
                        .flatMap(one -> one.rounds().stream())
                        .toList();
        download(http, "text/csv; charset=utf-8", "findings.csv", FindingsCsv.write(rows));
    }

    private void svg(Context http) {
        Frame frame = frames.ofSite(http, "findings");
        String picture =
                find(http, frame)
                        .flatMap(
                                findings ->
                                        new TrendFigure(
                                                        findings,
                                                        words(frame, findings.rules()),
                                                        nursery(frame).zone())
                                                .drawing())
                        .orElseThrow(io.javalin.http.NotFoundResponse::new);
        download(http, "image/svg+xml; charset=utf-8", "findings.svg", picture);
    }

    private static void download(Context http, String type, String name, String content) {
        http.contentType(type);
        http.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        http.header("Cache-Control", "no-store");
        http.result(content);
    }

    private static FindingWords words(Frame frame, SiteRules rules) {
        return new FindingWords(frame.words(), rules.pests());
    }

    private static Nursery nursery(Frame frame) {
        return frame.nursery().orElseThrow();
    }

    private Optional<Findings> find(Context http, Frame frame) {
        Nursery nursery = nursery(frame);
        Optional<LocalDate> last = showFindings.counts().lastDay(nursery.slug());
        if (last.isEmpty()) {
            return Optional.empty();
        }
        SiteRules rules = showFindings.counts().rules(nursery.slug());
        LocalDate to = day(http, "to").orElse(last.get());
        LocalDate from = day(http, "from").orElse(to.minusDays(ShowFindings.USUAL_DAYS));
        if (from.isAfter(to)) {
            throw new Refused(Message.of("findings.days", from.toString(), to.toString()));
        }
        return subject(http, rules, to)
                .map(
                        subject ->
                                new Scope(
                                        subject,
                                        text(http, "variety"),
                                        text(http, "house"),
                                        text(http, "bench"),
                                        from,
                                        to))
                .map(scope -> showFindings.run(nursery.slug(), nursery.zone(), rules, scope));
    }

    /** A stage that the chosen pest does not have gives way to one that it has. */
    private static Optional<Subject> subject(Context http, SiteRules rules, LocalDate day) {
        Optional<Subject> usual = ShowFindings.usual(rules, day);
        Optional<Pest> pest =
                text(http, "pest").or(() -> usual.map(Subject::pest)).flatMap(rules.pests()::find);
        return pest.map(
                chosen -> {
                    List<String> groups = chosen.stageGroups();
                    String group =
                            text(http, "stage")
                                    .filter(groups::contains)
                                    .or(
                                            () ->
                                                    usual.map(Subject::stageGroup)
                                                            .filter(groups::contains))
                                    .orElseGet(() -> groups.get(0));
                    return new Subject(chosen.code(), group);
                });
    }

    private static Optional<String> text(Context http, String name) {
        return Optional.ofNullable(http.queryParam(name)).filter(value -> !value.isBlank());
    }

    private static Optional<LocalDate> day(Context http, String name) {
        return text(http, name)
                .map(
                        value -> {
                            try {
                                return LocalDate.parse(value);
                            } catch (DateTimeException e) {
                                throw new Refused(Message.of("form.day", value));
                            }
                        });
    }

    private static FindingsView view(Context http, Frame frame, Findings findings) {
        FindingWords say = words(frame, findings.rules());
        Answer answer = new Answer(findings, say);
        TrendFigure trend = new TrendFigure(findings, say, nursery(frame).zone());
        String query = http.queryString() == null ? "" : "?" + http.queryString();
        return new FindingsView(
                new Chooser(findings, say).view(),
                answer.sentence(),
                answer.lead(),
                new FindingsView.Sections(
                        trend.figure(),
                        new BenchStrips(findings, say).benches(),
                        new StageFigure(findings, say, trend.treatments()).figure(),
                        targeted(findings, say),
                        new FindingsView.Downloads(
                                frame.to("findings.csv") + query,
                                findings.sampled() ? frame.to("findings.svg") + query : "")),
                new Reasons(findings, say).all(),
                false);
    }

    private static Optional<FindingsView.Targeted> targeted(Findings findings, FindingWords say) {
        if (findings.targeted().isEmpty()) {
            return Optional.empty();
        }
        Days days = new Days(say.words());
        List<List<String>> rows =
                findings.targeted().stream()
                        .map(
                                one ->
                                        List.of(
                                                one.sample().code().text(),
                                                one.sample()
                                                        .collectedOn()
                                                        .map(days::dated)
                                                        .orElse("–"),
                                                one.sample().place().bench().orElse("–"),
                                                one.individuals()
                                                        .map(
                                                                n ->
                                                                        say.counted(
                                                                                findings.scope()
                                                                                        .subject(),
                                                                                n))
                                                        .orElse(
                                                                say.words()
                                                                        .say("figure.not-read"))))
                        .toList();
        List<String> head =
                List.of(
                        say.words().say("findings.targeted.sample"),
                        say.words().say("findings.table.day"),
                        say.words().say("strips.bench"),
                        say.words().say("strips.found"));
        return Optional.of(
                new FindingsView.Targeted(
                        say.figures().counted("findings.targeted.sub", rows.size()),
                        new Table(say.words().say("findings.targeted.title"), head, rows)));
    }

    private static FindingsView empty(Frame frame) {
        return new FindingsView(
                new FindingsView.Chooser(List.of(), "", ""),
                frame.say("findings.empty"),
                "",
                new FindingsView.Sections(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        new FindingsView.Downloads("", "")),
                List.of(),
                true);
    }
}
