package jarwise.base;

/**
 * A scout's input refused, with the reason as a message that each edge says in the reader's
 * language.
 */
public class Refused extends InvalidInput {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /**
     * Refuses with a reason.
     *
     * @param reason what, value, what is allowed, Maybe …
     */
    public Refused(Message reason) {
        super(reason.key() + " " + reason.arguments());
        this.reason = reason;
    }

    /** {@return the reason, to be said in the reader's language} */
    public Message reason() {
        return reason;
    }
}
