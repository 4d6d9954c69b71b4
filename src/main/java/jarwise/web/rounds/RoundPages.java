package jarwise.web.rounds;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.site.Nursery;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.planning.PlanRound;
import jarwise.usecase.planning.PlannedRound;
import jarwise.usecase.rounds.RoundResult;
import jarwise.usecase.rounds.SaveRound;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.usecase.rounds.WithdrawRound;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Rounds: the list, the planning with its answer as one types, one round. */
public final class RoundPages implements Pages {

    private static final String NOBODY = "desk";
    private static final int DAYS_BACK = 366;
    private static final int DAYS_AHEAD = 366;

    private final Server.Kit kit;
    private final Deeds deeds;
    private final ShowRounds rounds;
    private final RoundResult results;

    /** What can be done on these pages. */
    public record Deeds(PlanRound plan, SaveRound save, WithdrawRound withdraw) {}

    /** Makes the pages. */
    public RoundPages(Server.Kit kit, Deeds deeds, ShowRounds rounds, RoundResult results) {
        this.kit = kit;
        this.deeds = deeds;
        this.rounds = rounds;
        this.results = results;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/rounds", this::list);
        routes.get("/{nursery}/rounds/new", this::plan);
        routes.get("/{nursery}/rounds/new/answer", this::answer);
        routes.post("/{nursery}/rounds/new", this::save);
        routes.get("/{nursery}/rounds/{id}", this::show);
        routes.post("/{nursery}/rounds/{id}/withdraw", this::withdraw);
    }

    private void list(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        LocalDate today = frame.now().toLocalDate();
        RoundsView view =
                new RoundsView(
                        frame,
                        rounds.run(
                                nursery(frame).slug(),
                                today.minusDays(DAYS_BACK),
                                today.plusDays(DAYS_AHEAD)));
        kit.templates().answer(http, "rounds.jte", Map.of("frame", frame, "view", view));
    }

    private void plan(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        show(http, frame, planned(frame, typed(http.queryParamMap())));
    }

    private void show(Context http, Frame frame, PlannedRound planned) {
        PlanView view = new PlanView(frame, planned);
        AnswerView answer = new AnswerView(frame, planned);
        kit.templates()
                .answer(
                        http,
                        "rounds_plan.jte",
                        Map.of("frame", frame, "view", view, "answer", answer));
    }

    /** Only the answer, for a page that is open already. */
    private void answer(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        PlannedRound planned = planned(frame, typed(http.queryParamMap()));
        PlanView view = new PlanView(frame, planned);
        kit.templates()
                .answer(
                        http,
                        "rounds/answer.jte",
                        Map.of(
                                "frame",
                                frame,
                                "answer",
                                new AnswerView(frame, planned),
                                "faults",
                                view.faults()));
    }

    private void save(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        PlannedRound planned = planned(frame, typed(http.formParamMap()));
        if (!planned.mayBeRegistered()) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(http, frame, planned);
            return;
        }
        String id = deeds.save().run(nursery(frame).slug(), planned, person(frame));
        http.redirect(frame.to("rounds/" + id), HttpStatus.SEE_OTHER);
    }

    private PlannedRound planned(Frame frame, Map<String, String> typed) {
        return deeds.plan().run(nursery(frame), typed, frame.now(), frame.person());
    }

    private void show(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        show(http, frame, Form.fresh(frame));
    }

    private void show(Context http, Frame frame, Form form) {
        String slug = nursery(frame).slug();
        ShowRounds.Shown shown =
                rounds.find(slug, http.pathParam("id")).orElseThrow(NotFoundResponse::new);
        RoundView view = new RoundView(frame, shown, results.of(slug, shown), form);
        kit.templates().answer(http, "round.jte", Map.of("frame", frame, "view", view));
    }

    private void withdraw(Context http) {
        Frame frame = kit.frames().ofSite(http, "rounds");
        Map<String, String> typed = typed(http.formParamMap());
        String id = http.pathParam("id");
        try {
            deeds.withdraw().run(nursery(frame).slug(), id, person(frame), Fields.of(typed));
            http.redirect(frame.to("rounds/" + id), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(http, frame, Form.refused(frame, "withdraw", typed, refused));
        }
    }

    /** What was ticked more than once comes as one text with commas. */
    private static Map<String, String> typed(Map<String, List<String>> given) {
        Map<String, String> typed = new TreeMap<>();
        given.forEach((name, values) -> typed.put(name, String.join(",", values)));
        return typed;
    }

    private static String person(Frame frame) {
        return frame.person().isEmpty() ? NOBODY : frame.person();
    }

    private static Nursery nursery(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new);
    }
}
