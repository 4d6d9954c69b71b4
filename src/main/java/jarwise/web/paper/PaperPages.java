package jarwise.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.plan.RoundPlan;
import jarwise.render.label.FilterTemplate;
import jarwise.render.label.KeypadCard;
import jarwise.render.label.LabelGeometry;
import jarwise.render.report.Paper;
import jarwise.site.Nursery;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.paper.LabelChoice;
import jarwise.usecase.paper.LabelFields;
import jarwise.usecase.paper.PrintLabels;
import jarwise.usecase.paper.TypePaperSheet;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import java.util.Map;
import java.util.TreeMap;

/** Labels and sheets to print, and the paper sheet to type in. */
public final class PaperPages implements Pages {

    private static final String NOBODY = "desk";
    private static final String ROUND = "/{nursery}/rounds/{id}/";

    private final Server.Kit kit;
    private final ShowRounds rounds;
    private final PrintLabels print;
    private final TypePaperSheet type;

    /** Makes the pages. */
    public PaperPages(Server.Kit kit, ShowRounds rounds, PrintLabels print, TypePaperSheet type) {
        this.kit = kit;
        this.rounds = rounds;
        this.print = print;
        this.type = type;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(ROUND + "labels", this::labels);
        routes.post(ROUND + "labels", this::choose);
        routes.get(ROUND + "labels.pdf", this::labelsPdf);
        routes.get(ROUND + "labels-test.pdf", this::testPdf);
        routes.get(ROUND + "sheet.pdf", this::sheetPdf);
        routes.get(ROUND + "paper", this::paper);
        routes.post(ROUND + "paper", this::typeIn);
        routes.get("/{nursery}/paper/filter.pdf", this::filterPdf);
        routes.get("/{nursery}/paper/keys.pdf", this::keysPdf);
    }

    private void labels(Context http) {
        Frame frame = frame(http);
        labels(http, frame, Form.fresh(frame));
    }

    private void labels(Context http, Frame frame, Form form) {
        RoundPlan plan = plan(http, frame);
        LabelChoice choice = print.chosen(nursery(frame), frame.now().toLocalDate());
        int start = LabelFields.start(http.queryParam("start"), choice);
        LabelsView view =
                new LabelsView(
                        frame,
                        plan,
                        choice,
                        start,
                        form,
                        print.cautions(
                                nursery(frame), plan, frame.words(), frame.now().toInstant()));
        kit.templates().answer(http, "labels.jte", Map.of("frame", frame, "view", view));
    }

    private void choose(Context http) {
        Frame frame = frame(http);
        RoundPlan plan = plan(http, frame);
        Map<String, String> typed = typed(http);
        try {
            LabelFields wanted = LabelFields.of(Fields.of(typed));
            print.choose(nursery(frame), wanted.choice(), person(frame), frame.now());
            String page =
                    switch (typed.getOrDefault("do", "")) {
                        case "print" -> "labels.pdf";
                        case "test" -> "labels-test.pdf";
                        default -> "labels";
                    };
            String address = "rounds/%s/%s?start=%d".formatted(plan.id(), page, wanted.start());
            http.redirect(frame.to(address), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            labels(http, frame, Form.refused(frame, "labels", typed, refused));
        }
    }

    private void labelsPdf(Context http) {
        Frame frame = frame(http);
        RoundPlan plan = plan(http, frame);
        LabelChoice choice = print.chosen(nursery(frame), frame.now().toLocalDate());
        int start = LabelFields.start(http.queryParam("start"), choice);
        pdf(
                http,
                "labels-" + plan.id(),
                print.labels(
                        nursery(frame),
                        plan,
                        choice,
                        start,
                        frame.words(),
                        frame.now().toInstant()));
    }

    private void testPdf(Context http) {
        Frame frame = frame(http);
        LabelChoice choice = print.chosen(nursery(frame), frame.now().toLocalDate());
        String name = "test-page-" + choice.sheet();
        pdf(http, name, PrintLabels.testPage(choice, frame.words()));
    }

    private void sheetPdf(Context http) {
        Frame frame = frame(http);
        RoundPlan plan = plan(http, frame);
        byte[] sheet =
                print.roundSheet(
                        nursery(frame), plan, paper(frame), frame.words(), frame.now().toInstant());
        pdf(http, "round-" + plan.id(), sheet);
    }

    private void filterPdf(Context http) {
        Frame frame = frame(http);
        pdf(http, "filter-grid", FilterTemplate.pdf(paper(frame), frame.words()));
    }

    private void keysPdf(Context http) {
        Frame frame = frame(http);
        pdf(http, "keys", KeypadCard.pdf(paper(frame), frame.words()));
    }

    /** What else is printed goes on the same paper as the labels. */
    private Paper paper(Frame frame) {
        LabelChoice choice = print.chosen(nursery(frame), frame.now().toLocalDate());
        return LabelGeometry.named(choice.sheet()).paper();
    }

    private void paper(Context http) {
        Frame frame = frame(http);
        paper(http, frame, Form.fresh(frame));
    }

    private void paper(Context http, Frame frame, Form form) {
        RoundPlan plan = plan(http, frame);
        PaperView view = new PaperView(frame, plan, type.open(nursery(frame).slug(), plan), form);
        kit.templates().answer(http, "paper.jte", Map.of("frame", frame, "view", view));
    }

    private void typeIn(Context http) {
        Frame frame = frame(http);
        RoundPlan plan = plan(http, frame);
        Map<String, String> typed = typed(http);
        try {
            type.run(
                    nursery(frame).slug(),
                    nursery(frame).zone(),
                    plan,
                    person(frame),
                    Fields.of(typed));
            http.redirect(frame.to("rounds/" + plan.id() + "/paper"), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            paper(http, frame, Form.refused(frame, "paper", typed, refused));
        }
    }

    private static void pdf(Context http, String name, byte[] bytes) {
        http.contentType("application/pdf");
        http.header("Content-Disposition", "attachment; filename=\"%s.pdf\"".formatted(name));
        http.header("Cache-Control", "no-store");
        http.result(bytes);
    }

    private Frame frame(Context http) {
        return kit.frames().ofSite(http, "rounds");
    }

    private RoundPlan plan(Context http, Frame frame) {
        return rounds.find(nursery(frame).slug(), http.pathParam("id"))
                .map(ShowRounds.Shown::plan)
                .orElseThrow(NotFoundResponse::new);
    }

    private static Map<String, String> typed(Context http) {
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((name, values) -> typed.put(name, String.join(",", values)));
        return typed;
    }

    private static String person(Frame frame) {
        return frame.person().isEmpty() ? NOBODY : frame.person();
    }

    private static Nursery nursery(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new);
    }
}
