package jarwise.wire.sheet;

/**
 * What stands where a count is expected. Zero is a value; the other states are not.
 *
 * @param state whether it was counted, and if not, why
 * @param individuals the number counted; 0 in every state but {@link State#COUNTED}
 */
public record CountCell(State state, long individuals) {

    /** Zero, not read, obscured and does not apply are never mixed up. */
    public enum State {
        COUNTED(""),
        NOT_READ("not read"),
        OBSCURED("obscured"),
        DOES_NOT_APPLY("does not apply");

        private final String text;

        State(String text) {
            this.text = text;
        }

        /** {@return the words for it in a sheet; a blank cell is not read, too} */
        public String text() {
            return text;
        }
    }

    static CountCell counted(long individuals) {
        return new CountCell(State.COUNTED, individuals);
    }

    /** {@return whether there is a number, be it zero} */
    public boolean isCounted() {
        return state == State.COUNTED;
    }
}
