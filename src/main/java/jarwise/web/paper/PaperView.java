package jarwise.web.paper;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.Fluid;
import jarwise.usecase.form.Fields;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What the form for a paper sheet shows: a row for each jar that nothing is noted of yet.
 *
 * @param frame the reader's language and clocks
 * @param plan the round
 * @param open jars to type in
 * @param form what was typed and what is wrong with it
 */
public record PaperView(Frame frame, RoundPlan plan, List<PlannedJar> open, Form form) {

    /** {@return how many jars are still to be typed in} */
    public String answer() {
        return frame.say("paper.answer", open.size(), plan.id());
    }

    /** {@return the address of something of this round} */
    public String to(String page) {
        return frame.to("rounds/" + plan.id() + page);
    }

    /** {@return the day of the sheet: as typed, else that of the round} */
    public String day() {
        return form.typedOr("day", plan.day().toString());
    }

    /** {@return where a jar is cut, or what kind of control it is} */
    public String place(PlannedJar jar) {
        if (!jar.isOfCrop()) {
            return frame.say("role." + jar.role().name().toLowerCase(Locale.ROOT));
        }
        return jar.variety().map(variety -> jar.bench() + ", " + variety).orElse(jar.bench());
    }

    /** {@return the name of a jar's field} */
    public String field(String name, PlannedJar jar) {
        return name + ":" + jar.code().text();
    }

    /** {@return what a field of a jar is called by those who do not see its row} */
    public String label(String key, PlannedJar jar) {
        return frame.say("paper.field", frame.say("sheet.round." + key), jar.code().text());
    }

    /** {@return the fluids one can have washed in} */
    public List<String> fluids() {
        return Arrays.stream(Fluid.values()).map(Fields::wordOf).toList();
    }

    /** {@return all faults of a jar's row} */
    public List<String> faults(PlannedJar jar) {
        return List.of("cut", "fluid", "shake", "washed", "frozen", "remarks").stream()
                .filter(name -> !form.fault(field(name, jar)).isEmpty())
                .map(name -> fault(name, jar))
                .toList();
    }

    private String fault(String name, PlannedJar jar) {
        String column = frame.say("sheet.round." + name);
        return frame.say("paper.fault", column, form.fault(field(name, jar)));
    }
}
