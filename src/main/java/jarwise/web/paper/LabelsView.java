package jarwise.web.paper;

import jarwise.plan.RoundPlan;
import jarwise.render.label.LabelGeometry;
import jarwise.render.label.Part;
import jarwise.usecase.paper.LabelChoice;
import jarwise.usecase.paper.PrintLabels;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;

/**
 * What the page of labels shows.
 *
 * @param frame the reader's language and clocks
 * @param plan the round
 * @param choice sheet and nudge that hold
 * @param start first label still on the sheet
 * @param form what was typed and what is wrong with it
 * @param cautions what stands on the sheets, too
 */
public record LabelsView(
        Frame frame,
        RoundPlan plan,
        LabelChoice choice,
        int start,
        Form form,
        List<String> cautions) {

    /** A sheet that can be chosen. */
    public record Sheet(String name, String words, boolean chosen) {}

    /** {@return jars, labels and sheets in a sentence} */
    public String answer() {
        int jars = plan.jars().size();
        int sheets = PrintLabels.sheets(plan, choice, start, frame.words());
        return frame.say("labels.answer", jars, jars * Part.values().length, sheets);
    }

    /** {@return the address of something of this round} */
    public String to(String page) {
        return frame.to("rounds/" + plan.id() + page);
    }

    /** {@return the sheets, with the one that holds} */
    public List<Sheet> sheets() {
        String chosen = form.typedOr("sheet", choice.sheet());
        return LabelGeometry.all().stream()
                .map(sheet -> new Sheet(sheet.name(), words(sheet), sheet.name().equals(chosen)))
                .toList();
    }

    private String words(LabelGeometry sheet) {
        return frame.say(
                "labels.sheet.of",
                frame.say("labels.paper." + sheet.paper().name().toLowerCase(Locale.ROOT)),
                sheet.size(),
                number(sheet.first().width()),
                number(sheet.first().height()));
    }

    /** {@return a number as this language writes it} */
    public String number(double value) {
        return NumberFormat.getInstance(frame.words().language().locale()).format(value);
    }

    /** {@return the first sheet as a drawing} */
    public String picture() {
        return PrintLabels.picture(plan, choice, start, frame.words());
    }

    /** {@return what the drawing shows} */
    public String caption() {
        return frame.say("labels.picture", words(LabelGeometry.named(choice.sheet())));
    }
}
