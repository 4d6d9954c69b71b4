package jarwise.web.walk;

import jarwise.plan.PlannedJar;
import jarwise.sample.SampleState;
import jarwise.usecase.form.Fields;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import jarwise.wire.walk.WalkSheet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A round as plain forms: every jar with its next step.
 *
 * @param frame the reader's language and clocks
 * @param sheet the round
 * @param shown where its jars stand
 * @param wanted code of the jar whose step is asked for; empty for the next one
 * @param form what was typed and what is wrong with it
 */
public record WalkView(
        Frame frame, WalkSheet sheet, ShowRounds.Shown shown, String wanted, Form form) {

    private static final Set<SampleState> OPEN =
            Set.of(SampleState.PLANNED, SampleState.CUT, SampleState.WASHED);

    /** {@return the jar whose step is asked for: the wanted one, else the next in the walk} */
    public Optional<PlannedJar> jar() {
        List<PlannedJar> jars = sheet.plan().jars();
        return jars.stream()
                .filter(jar -> jar.code().text().equals(wanted))
                .findFirst()
                .or(() -> jars.stream().filter(jar -> step(jar).equals("cut")).findFirst())
                .or(() -> jars.stream().filter(jar -> !step(jar).isEmpty()).findFirst());
    }

    /** {@return the next step of a jar; empty where nothing is left to do before reading} */
    public String step(PlannedJar jar) {
        return switch (state(jar)) {
            case PLANNED -> jar.isOfCrop() ? "cut" : "washed";
            case CUT -> "washed";
            case WASHED -> "freezer_in";
            default -> "";
        };
    }

    /** {@return whether anything is left to do with a jar before it is read} */
    public boolean isOpen(PlannedJar jar) {
        return OPEN.contains(state(jar));
    }

    /** {@return where a jar stands, in words} */
    public String stateName(PlannedJar jar) {
        return frame.say("state." + Fields.wordOf(state(jar)));
    }

    private SampleState state(PlannedJar jar) {
        return Optional.ofNullable(shown.jars().get(jar.code()))
                .map(sample -> sample.state())
                .orElse(SampleState.PLANNED);
    }

    /** {@return where a jar is cut, in words; what it is for where it is cut nowhere} */
    public String place(PlannedJar jar) {
        if (!jar.isOfCrop()) {
            return frame.say("role." + Fields.wordOf(jar.role()));
        }
        return jar.variety().map(variety -> jar.bench() + ", " + variety).orElse(jar.bench());
    }

    /** {@return until when nobody may enter the place of a jar; empty where people may} */
    public Optional<String> noEntry(PlannedJar jar) {
        return sheet.noEntry().stream()
                .filter(
                        place ->
                                place.house().equals(jar.house())
                                        && (place.benches().isEmpty()
                                                || place.benches().contains(jar.bench())))
                .map(
                        place ->
                                place.until()
                                        .map(
                                                end ->
                                                        frame.say(
                                                                "walk.closed.until",
                                                                jar.bench(),
                                                                frame.moment(end)))
                                        .orElseGet(
                                                () ->
                                                        frame.say(
                                                                "walk.closed.unknown",
                                                                jar.bench())))
                .findFirst();
    }

    /** {@return what was typed into a field, or what is known already} */
    public String value(String field) {
        return form.typed(field);
    }
}
