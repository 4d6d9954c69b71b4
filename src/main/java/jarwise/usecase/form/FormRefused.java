package jarwise.usecase.form;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import java.util.LinkedHashMap;
import java.util.Map;

/** A form that was not taken: nothing of it was written. */
public final class FormRefused extends InvalidInput {

    private static final long serialVersionUID = 1L;

    private final transient Map<String, Message> faults;

    /**
     * Refuses a form.
     *
     * @param faults what is wrong, by the name of the field
     */
    public FormRefused(Map<String, Message> faults) {
        super("The form has faults: " + faults);
        this.faults = new LinkedHashMap<>(faults);
    }

    /** {@return what is wrong, by the name of the field} */
    public Map<String, Message> faults() {
        return faults;
    }
}
