package jarwise.site.floor;

import jarwise.base.InvalidInput;
import jarwise.base.Message;

/** A layout that could not be read, with the sentence that says why. */
public final class LayoutRefused extends InvalidInput {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    LayoutRefused(Message reason) {
        super("The layout can't be read: " + reason);
        this.reason = reason;
    }

    /** {@return why, as a sentence} */
    public Message reason() {
        return reason;
    }
}
