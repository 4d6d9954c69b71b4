package jarwise.web.findings;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.site.Nursery;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.SiteRules;
import jarwise.web.Frame;
import jarwise.web.Frames;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.Templates;
import jarwise.wire.findings.FindingsCsv;
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
        return ScopeQuery.of(http, rules, last.get())
                .map(scope -> showFindings.run(nursery.slug(), nursery.zone(), rules, scope));
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
                        new TargetedTable(findings, say).table(),
                        new FindingsView.Downloads(
                                frame.to("findings.csv") + query,
                                findings.sampled() ? frame.to("findings.svg") + query : "")),
                new Reasons(findings, say).all(),
                false);
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
