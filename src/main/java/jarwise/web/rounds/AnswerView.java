package jarwise.web.rounds;

import jarwise.plan.RoundQuestion;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.sample.SampleRole;
import jarwise.usecase.form.Fields;
import jarwise.usecase.planning.Ask;
import jarwise.usecase.planning.JarPlace;
import jarwise.usecase.planning.PlanAnswer;
import jarwise.usecase.planning.PlanRequest;
import jarwise.usecase.planning.PlannedRound;
import jarwise.usecase.planning.RoundWarning;
import jarwise.usecase.planning.StandThere;
import jarwise.web.Frame;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The answer to a plan in the reader's words.
 *
 * @param frame the reader's language and clocks
 * @param planned what is asked and answered
 */
public record AnswerView(Frame frame, PlannedRound planned) {

    private static final char NO_BREAK = '\u00A0';

    /** A line of the cost. */
    public record Cost(String what, String detail, String minutes) {}

    /**
     * One warning.
     *
     * @param title what is wrong
     * @param text why, and what follows
     * @param button the way out, as a link; empty where only the scout can find one
     * @param address where that leads
     * @param stop whether the round can't be saved as it is
     */
    public record Warning(String title, String text, String button, String address, boolean stop) {}

    private FindingWords say() {
        return new FindingWords(frame.words(), planned.rules().pests());
    }

    private Figures figures() {
        return say().figures();
    }

    private PlanRequest request() {
        return planned.request().orElseThrow();
    }

    private PlanAnswer answer() {
        return planned.answer().orElseThrow();
    }

    /** {@return whether there is an answer} */
    public boolean isAnswered() {
        return planned.answer().isPresent();
    }

    /**
     * {@return jars, growing points and time, in a sentence; empty where there is no jar to cut}
     */
    public String headline() {
        if (cropJars() == 0) {
            return "";
        }
        return frame.say(
                "plan.answer.cost",
                figures().jars(cropJars()),
                figures().counted("plan.points", request().assumed().growingPoints()),
                figures().minutes(Math.round(minutes(cropJars()))).replace(' ', NO_BREAK));
    }

    /** {@return what the round will be able to say, in a sentence} */
    public String tells() {
        return new PlanSentences(frame, say(), request()).tells(answer());
    }

    /** {@return what stands behind that sentence} */
    public List<String> leads() {
        return new PlanSentences(frame, say(), request()).leads(answer());
    }

    /** Random jars: what is placed where places are chosen, else what the engine asks for. */
    private int cropJars() {
        long placed = planned.places().stream().filter(AnswerView::isRandom).count();
        return placed > 0 ? (int) placed : answer().jars();
    }

    private static boolean isRandom(JarPlace jar) {
        return jar.spot().isPresent();
    }

    private double minutes(long jars) {
        return request().assumed().workload().minutes(jars);
    }

    /** {@return whether trials are still being drawn} */
    public boolean isDrawing() {
        return planned.answer()
                .filter(
                        answer ->
                                answer instanceof PlanAnswer.Compare compare
                                        && compare.outlook().outlook().isEmpty())
                .isPresent();
    }

    /** {@return how far the drawing is} */
    public String drawn() {
        return answer() instanceof PlanAnswer.Compare compare
                ? frame.say(
                        "plan.drawing",
                        figures().whole(compare.outlook().done()),
                        figures().whole(compare.outlook().trials()))
                : "";
    }

    /** {@return the picture, once there is something to draw} */
    public Optional<Picture> picture() {
        PlanFigures draw = new PlanFigures(say());
        PlanAnswer answer = answer();
        Ask ask = request().ask();
        if (answer instanceof PlanAnswer.Detect detect) {
            return Optional.of(draw.detect((Ask.Detect) ask, detect));
        }
        if (answer instanceof PlanAnswer.Estimate estimate) {
            return Optional.of(draw.estimate((Ask.Estimate) ask, estimate));
        }
        if (answer instanceof PlanAnswer.Decide decide) {
            return Optional.of(draw.decide((Ask.Decide) ask, decide));
        }
        if (answer instanceof PlanAnswer.Compare compare) {
            return draw.compare(compare);
        }
        PlanAnswer.Delimit delimit = (PlanAnswer.Delimit) answer;
        List<String> planted =
                planned.stands().stream().map(stand -> stand.bench().code()).toList();
        return delimit.rings().places().isEmpty()
                ? Optional.empty()
                : Optional.of(draw.delimit((Ask.Delimit) ask, delimit, planted));
    }

    /** {@return what the picture shows} */
    public String pictureTitle() {
        return frame.say("plan.picture.title." + Fields.wordOf(planned.question()));
    }

    /** {@return the table behind the picture} */
    public Optional<Table> table() {
        return new PlanTables(frame, say(), request()).of(answer());
    }

    /** {@return what stands in the way, each with its way out} */
    public List<Warning> warnings() {
        return new WarningRows(frame, say(), planned).rows();
    }

    /** {@return whether an exception for entering can be typed} */
    public boolean asksForException() {
        return planned.warnings().stream()
                .anyMatch(
                        warning ->
                                warning instanceof RoundWarning.NoEntry entry && !entry.excepted());
    }

    /** {@return minutes in all and places in the freezer, in a sentence} */
    public String total() {
        int jars = cropJars() + request().extras().jars();
        return frame.say(
                "plan.cost.total",
                figures().minutes(Math.round(minutes(jars))),
                figures()
                        .counted(
                                "plan.freezer",
                                request().assumed().workload().freezerPlaces(jars)));
    }

    /** {@return what costs how much} */
    public List<Cost> costs() {
        int random = cropJars();
        List<Cost> costs = new ArrayList<>();
        if (random > 0) {
            costs.add(ofRandomPlaces(random));
        }
        int hot = request().extras().hotSpots().size();
        if (hot > 0) {
            costs.add(extra("plan.cost.hot", figures().jars(hot), hot));
        }
        if (request().extras().blank()) {
            costs.add(extra("plan.cost.blank", "", 1));
        }
        if (request().extras().spiked().isPresent()) {
            costs.add(
                    extra(
                            "plan.cost.spike",
                            figures().whole(request().extras().spiked().getAsInt()),
                            1));
        }
        return costs;
    }

    private Cost ofRandomPlaces(int jars) {
        var workload = request().assumed().workload();
        return new Cost(
                frame.say("plan.cost.random", figures().jars(jars)),
                frame.say(
                        "plan.cost.parts",
                        figures().plain(rounded(jars * workload.cutMinutes())),
                        figures().plain(rounded(jars * workload.washMinutes())),
                        figures().plain(rounded(jars * workload.readMinutes()))),
                figures().minutes(Math.round(minutes(jars))));
    }

    private Cost extra(String key, String argument, int jars) {
        return new Cost(
                frame.say(key, argument),
                frame.say(key + ".sub"),
                figures().minutes(Math.round(minutes(jars))));
    }

    private static double rounded(double minutes) {
        return Math.round(minutes);
    }

    /** {@return whether jars have their places} */
    public boolean isPlaced() {
        return !planned.places().isEmpty();
    }

    /** {@return the walk, stop by stop} */
    public Table walk() {
        Map<StandThere, List<JarPlace>> stops =
                planned.places().stream()
                        .filter(jar -> jar.role() == SampleRole.CROP)
                        .collect(
                                Collectors.groupingBy(
                                        jar -> jar.stand().orElseThrow(),
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        List<List<String>> rows = new ArrayList<>();
        stops.forEach(
                (stand, jars) ->
                        rows.add(
                                List.of(
                                        frame.say(
                                                "plan.stand",
                                                stand.bench().code(),
                                                say().variety(stand.lot().variety()),
                                                stand.lot().code()),
                                        figures().whole(jars.size()),
                                        places(jars))));
        return new Table(
                frame.say("plan.walk.caption"),
                List.of(
                        frame.say("strips.bench"),
                        frame.say("plan.walk.jars"),
                        frame.say("plan.walk.places")),
                rows);
    }

    private String places(List<JarPlace> jars) {
        return jars.stream()
                .map(
                        jar ->
                                jar.spot()
                                        .map(spot -> new SpotWords(frame).brief(spot))
                                        .orElseGet(() -> frame.say("plan.walk.hot")))
                .collect(Collectors.joining("; "));
    }

    /** {@return the seed of the places, in a sentence} */
    public String seed() {
        return frame.say("plan.seed", String.valueOf(request().seed()));
    }

    /** {@return the day of the round} */
    public String day() {
        return new Days(frame.words()).weekday(request().day());
    }

    /** {@return what is assumed, folded} */
    public List<Reason> reasons() {
        return new PlanReasons(frame, figures(), planned).all();
    }

    /** {@return fields to send again when the round is saved} */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>(planned.typed());
        typed.remove("form_token");
        typed.remove("exception_by");
        typed.remove("exception_reason");
        typed.put("sent", "1");
        if (request().extras().blank()) {
            typed.put("blank", "1");
        }
        typed.put("question", Fields.wordOf(planned.question()));
        typed.put("day", planned.day().toString());
        typed.put("seed", String.valueOf(request().seed()));
        return typed;
    }

    /** {@return why it can't be saved yet; empty where it can} */
    public String notYet() {
        if (planned.mayBeRegistered()) {
            return "";
        }
        if (planned.places().isEmpty()) {
            return frame.say(
                    planned.question() == RoundQuestion.COMPARE
                            ? "plan.not-yet.compare"
                            : planned.question() == RoundQuestion.DELIMIT
                                    ? "plan.not-yet.delimit"
                                    : "plan.not-yet.places");
        }
        return frame.say("plan.not-yet.blocked");
    }

    /** {@return whether only a named person's exception keeps it from being saved} */
    public boolean maySaveWithException() {
        return asksForException()
                && planned.warnings().stream()
                        .filter(RoundWarning::blocks)
                        .allMatch(warning -> warning instanceof RoundWarning.NoEntry);
    }
}
