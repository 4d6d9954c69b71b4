package jarwise.base;

/**
 * Input that cannot be used, told to a scout: what, the value, what is allowed and, where it can be
 * guessed, a "Maybe …". It is the caller's fault, never ours: the command line answers it with exit
 * code 2, a page with a message beside the field.
 */
public class InvalidInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Says what is wrong.
     *
     * @param message one paragraph for a scout
     */
    public InvalidInput(String message) {
        super(message);
    }
}
