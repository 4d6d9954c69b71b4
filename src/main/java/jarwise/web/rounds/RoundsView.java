package jarwise.web.rounds;

import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.usecase.form.Fields;
import jarwise.usecase.rounds.RoundState;
import jarwise.usecase.rounds.ShowRounds.Shown;
import jarwise.web.Frame;
import java.util.Arrays;
import java.util.List;

/**
 * The list of rounds in the reader's words.
 *
 * @param frame the reader's language and clocks
 * @param rounds the latest first
 */
public record RoundsView(Frame frame, List<Shown> rounds) {

    /** Rounds that stand alike. */
    public record Part(String title, List<Row> rows) {}

    /** One round. */
    public record Row(String name, String address, String what, String jars, String by) {}

    public RoundsView {
        rounds = List.copyOf(rounds);
    }

    /** {@return what waits, in a sentence} */
    public String answer() {
        long waiting =
                standing().stream().filter(round -> round.state() == RoundState.PLANNED).count();
        return frame.say("rounds.answer", waiting, new Figures(frame.words()).whole(waiting));
    }

    private List<Shown> standing() {
        return rounds.stream().filter(round -> round.withdrawal().isEmpty()).toList();
    }

    /** {@return rounds by where they stand, those that were withdrawn last} */
    public List<Part> parts() {
        List<Part> parts =
                new java.util.ArrayList<>(
                        Arrays.stream(RoundState.values())
                                .map(
                                        state ->
                                                part(
                                                        "rounds.state." + Fields.wordOf(state),
                                                        standing().stream()
                                                                .filter(r -> r.state() == state)
                                                                .toList()))
                                .toList());
        parts.add(
                part(
                        "rounds.state.withdrawn",
                        rounds.stream().filter(r -> r.withdrawal().isPresent()).toList()));
        return parts.stream().filter(part -> !part.rows().isEmpty()).toList();
    }

    private Part part(String key, List<Shown> there) {
        return new Part(frame.say(key), there.stream().map(this::row).toList());
    }

    private Row row(Shown shown) {
        Figures figures = new Figures(frame.words());
        return new Row(
                frame.say(
                        "rounds.name",
                        new Days(frame.words()).weekday(shown.plan().day()),
                        letter(shown)),
                frame.to("rounds/" + shown.plan().id()),
                frame.say("plan.say." + Fields.wordOf(shown.plan().question())),
                frame.say(
                        "rounds.jars",
                        figures.jars(shown.plan().jars().size()),
                        figures.whole(in(shown, SampleState.PLANNED)),
                        figures.whole(read(shown))),
                shown.plan().plannedBy());
    }

    static String letter(Shown shown) {
        return shown.plan().id().substring(shown.plan().day().toString().length() + 1);
    }

    private static long in(Shown shown, SampleState state) {
        return shown.jars().values().stream().filter(jar -> jar.state() == state).count();
    }

    private static long read(Shown shown) {
        return shown.jars().values().stream()
                .map(CollectedSample::state)
                .filter(state -> state == SampleState.READ || state == SampleState.PARTLY_READ)
                .count();
    }
}
