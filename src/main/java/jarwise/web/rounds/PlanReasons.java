package jarwise.web.rounds;

import jarwise.plan.RoundQuestion;
import jarwise.render.words.Figures;
import jarwise.usecase.form.Fields;
import jarwise.usecase.planning.Habit;
import jarwise.usecase.planning.PlannedRound;
import jarwise.web.Frame;
import jarwise.web.piece.Reason;
import java.util.ArrayList;
import java.util.List;

/** What a plan takes for granted, and where that comes from. */
final class PlanReasons {

    private final Frame frame;
    private final Figures figures;
    private final PlannedRound planned;

    PlanReasons(Frame frame, Figures figures, PlannedRound planned) {
        this.frame = frame;
        this.figures = figures;
        this.planned = planned;
    }

    List<Reason> all() {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(method());
        reasons.add(seen());
        reasons.add(
                new Reason(
                        frame.say("plan.why.k"),
                        frame.say("plan.why.k.brief", number("k")),
                        List.of(source("k"), frame.say("plan.why.k.text")),
                        "plan-detect"));
        reasons.add(
                new Reason(
                        frame.say("plan.why.time"),
                        frame.say(
                                "plan.why.time.brief",
                                number("cut"),
                                number("wash"),
                                number("read")),
                        List.of(
                                frame.say("plan.why.time.cut", source("cut")),
                                frame.say("plan.why.time.wash", source("wash")),
                                frame.say("plan.why.time.read", source("read"))),
                        "workload"));
        return reasons;
    }

    private Reason method() {
        String question = Fields.wordOf(planned.question());
        List<String> text = new ArrayList<>();
        text.add(frame.say("plan.why." + question + ".text"));
        if (planned.question() == RoundQuestion.DETECT) {
            text.add(frame.say("plan.why.ways"));
        }
        return new Reason(
                frame.say("plan.why.method"),
                frame.say("plan.why." + question),
                text,
                anchor(planned.question()));
    }

    private static String anchor(RoundQuestion question) {
        return switch (question) {
            case DETECT -> "plan-detect";
            case DELIMIT -> "rings";
            case ESTIMATE -> "plan-estimate";
            case COMPARE -> "plan-compare";
            case DECIDE -> "sequential";
        };
    }

    private Reason seen() {
        double share =
                planned.request().map(request -> request.assumed().detection().mean()).orElse(1.0);
        return new Reason(
                frame.say("plan.why.seen"),
                frame.say("plan.why.seen.brief", figures.percent(Math.round(100 * share) / 100.0)),
                List.of(
                        frame.say(
                                "plan.why.seen.extraction",
                                number("efficiency"),
                                source("efficiency")),
                        frame.say(
                                "plan.why.seen.reader",
                                number("sensitivity"),
                                source("sensitivity"))),
                "plan-detect");
    }

    /** A number of the form, written as its reader writes numbers. */
    private String number(String field) {
        String value = planned.value(field);
        return value.matches("[0-9]{1,9}(\\.[0-9]{1,9})?")
                ? figures.plain(Double.parseDouble(value))
                : value;
    }

    /** Where a number comes from: typed, or the site's habit. */
    private String source(String field) {
        if (!planned.typed().getOrDefault(field, "").isBlank()) {
            return frame.say("plan.from.typed");
        }
        Habit habit = planned.habits().get(field);
        return habit == null ? "" : frame.words().say(habit.source());
    }
}
