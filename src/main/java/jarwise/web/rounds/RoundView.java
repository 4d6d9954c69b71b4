package jarwise.web.rounds;

import jarwise.decision.Finding;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.sample.CollectedSample;
import jarwise.usecase.form.Fields;
import jarwise.usecase.rounds.RoundResult;
import jarwise.usecase.rounds.RoundState;
import jarwise.usecase.rounds.ShowRounds.Shown;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.util.ArrayList;
import java.util.List;

/**
 * One round in the reader's words.
 *
 * @param frame the reader's language and clocks
 * @param shown the round and where its jars stand
 * @param known what its jars say
 * @param form the form that was refused, if one was
 */
public record RoundView(Frame frame, Shown shown, RoundResult.Known known, Form form) {

    /** A jar. */
    public record Row(
            String walk, String code, String address, String where, String spot, String state) {}

    /** What a stand's jars say. */
    public record Said(String place, String words, String figures, String verdict) {}

    private RoundPlan plan() {
        return shown.plan();
    }

    private FindingWords say() {
        return new FindingWords(frame.words(), known.rules().pests());
    }

    private Figures figures() {
        return new Figures(frame.words());
    }

    /** {@return day and state of the round, in a sentence} */
    public String answer() {
        String day = new Days(frame.words()).full(plan().day());
        String key =
                shown.withdrawal().isPresent()
                        ? "rounds.one.answer.withdrawn"
                        : "rounds.one.answer." + Fields.wordOf(shown.state());
        return frame.say(key, day, figures().jars(plan().jars().size()));
    }

    /** {@return what it was planned to be able to say} */
    public String wanted() {
        return frame.say(
                "rounds.one.wanted",
                frame.say("plan.say." + Fields.wordOf(plan().question())),
                known.subject().map(say()::subject).orElse(""));
    }

    /** {@return what can be said now; one sentence for all its jars together} */
    public String can() {
        if (known.together().isEmpty()) {
            return frame.say("rounds.one.can.not-yet");
        }
        Finding finding = known.together().get();
        long read = finding.evidence().samples();
        return finding.noneFound()
                ? frame.say("rounds.one.can.none", figures().jars(read), say().inFigures(finding))
                : frame.say(
                        "rounds.one.can.found",
                        say().inWords(finding),
                        say().inFigures(finding),
                        figures().jars(read));
    }

    /** {@return what each stand's jars say} */
    public List<Said> stands() {
        return known.stands().stream()
                .map(
                        finding ->
                                new Said(
                                        say().place(finding.stand()),
                                        say().inWords(finding),
                                        say().inFigures(finding),
                                        say().verdict(finding)))
                .toList();
    }

    /** {@return who planned it, and when} */
    public String by() {
        return frame.say("rounds.one.by", plan().plannedBy(), frame.moment(plan().plannedAt()));
    }

    /** {@return why it is not walked; empty where it is} */
    public String withdrawn() {
        return shown.withdrawal()
                .map(
                        withdrawal ->
                                frame.say(
                                        "rounds.one.withdrawn",
                                        frame.moment(withdrawal.at()),
                                        withdrawal.by(),
                                        withdrawal.reason()))
                .orElse("");
    }

    /** {@return who answers for entering early; empty where nobody has to} */
    public String exception() {
        String by = plan().numbers().getOrDefault("exception_by", "");
        return by.isEmpty()
                ? ""
                : frame.say(
                        "rounds.one.exception",
                        by,
                        plan().numbers().getOrDefault("exception_reason", ""));
    }

    /** {@return the seed of the places, in a sentence} */
    public String seed() {
        return frame.say("plan.seed", String.valueOf(plan().seed()));
    }

    /** {@return whether it can still be withdrawn} */
    public boolean mayBeWithdrawn() {
        return shown.withdrawal().isEmpty() && shown.state() != RoundState.READ;
    }

    /** {@return the address of a page of this round} */
    public String to(String page) {
        return frame.to("rounds/" + plan().id() + page);
    }

    /** {@return the address of the walk} */
    public String walk() {
        return frame.to("walk/" + plan().id());
    }

    /** {@return its jars in the order of the walk} */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (PlannedJar jar : plan().jars()) {
            CollectedSample sample = shown.jars().get(jar.code());
            rows.add(
                    new Row(
                            figures().whole(jar.walk()),
                            jar.code().text(),
                            frame.to("samples/" + jar.code().text()),
                            where(jar),
                            jar.spot()
                                    .map(spot -> new SpotWords(frame).brief(spot))
                                    .orElseGet(
                                            () -> jar.isOfCrop() ? frame.say("plan.walk.hot") : ""),
                            sample == null
                                    ? ""
                                    : frame.say("state." + Fields.wordOf(sample.state()))));
        }
        return rows;
    }

    private String where(PlannedJar jar) {
        if (!jar.isOfCrop()) {
            return frame.say("role." + Fields.wordOf(jar.role()));
        }
        return jar.variety()
                .map(variety -> frame.say("place.both", say().variety(variety), jar.bench()))
                .orElse(jar.bench());
    }
}
