package jarwise.wire.table;

import jarwise.base.InvalidInput;
import java.util.List;

/** A sheet that was not taken in: nothing of it was used. */
public final class SheetRefused extends InvalidInput {

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;
    private final int number;

    SheetRefused(List<Fault> faults, int number) {
        super("The sheet has %d fault(s); nothing of it was taken: %s".formatted(number, faults));
        this.faults = List.copyOf(faults);
        this.number = number;
    }

    /** {@return the first faults, in the order of the rows} */
    public List<Fault> faults() {
        return faults;
    }

    /** {@return how many faults there are in all} */
    public int number() {
        return number;
    }
}
