package jarwise.web.piece;

import jarwise.base.Message;
import jarwise.usecase.form.FormRefused;
import jarwise.web.Frame;
import java.util.Map;

/**
 * A form as a page shows it: what was typed, and what is wrong with it, beside each field.
 *
 * @param frame says the faults in the reader's language
 * @param name which of the forms of a page it is
 * @param typed what was typed, by field
 * @param faults what is wrong, by field
 */
public record Form(
        Frame frame, String name, Map<String, String> typed, Map<String, Message> faults) {

    public Form {
        typed = Map.copyOf(typed);
        faults = Map.copyOf(faults);
    }

    /** {@return a form nobody has filled in yet} */
    public static Form fresh(Frame frame) {
        return new Form(frame, "", Map.of(), Map.of());
    }

    /** {@return a form as it was refused} */
    public static Form refused(
            Frame frame, String name, Map<String, String> typed, FormRefused refused) {
        return new Form(frame, name, typed, refused.faults());
    }

    /** {@return the same faults for the form of this name, none for any other} */
    public Form named(String wanted) {
        return name.equals(wanted) ? this : fresh(frame);
    }

    /** {@return whether anything in it is wrong} */
    public boolean isRefused() {
        return !faults.isEmpty();
    }

    /** {@return what was typed into a field; empty where nothing was} */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    /** {@return what was typed into a field; {@code usual} where the form was never sent} */
    public String typedOr(String field, String usual) {
        return typed.getOrDefault(field, usual);
    }

    /** {@return what is wrong with a field, as a sentence; empty where nothing is} */
    public String fault(String field) {
        Message fault = faults.get(field);
        return fault == null ? "" : frame.words().say(fault);
    }
}
