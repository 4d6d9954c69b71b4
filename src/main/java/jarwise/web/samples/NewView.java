package jarwise.web.samples;

import jarwise.pest.Pest;
import jarwise.usecase.form.Fields;
import jarwise.usecase.samples.ListSamples;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.util.Arrays;
import java.util.List;

/**
 * What the form for a new sample shows.
 *
 * @param frame the reader's language and clocks
 * @param form what was typed and what is wrong with it
 * @param offers the next free code, places, readers and pests
 */
public record NewView(Frame frame, Form form, ListSamples.Offers offers) {

    /** {@return a field's value: what was typed, else what is usual} */
    public String value(String field) {
        return switch (field) {
            case "code" -> form.typedOr(field, offers.nextCode());
            case "collected_on" -> form.typedOr(field, frame.now().toLocalDate().toString());
            default -> form.typed(field);
        };
    }

    /** {@return the constants of an enum as they are written in forms} */
    public static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants).map(Fields::wordOf).toList();
    }

    /** {@return the pest chosen for the row of counts} */
    public List<Pest> pests() {
        return offers.pests().all();
    }

    /** {@return whether anything was typed into the counts of a pest} */
    public boolean isOpen(Pest pest) {
        return form.typed().entrySet().stream()
                .anyMatch(
                        field ->
                                field.getKey().startsWith("count:" + pest.code() + ":")
                                        && !field.getValue().isBlank());
    }
}
