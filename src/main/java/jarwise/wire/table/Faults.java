package jarwise.wire.table;

import java.util.ArrayList;
import java.util.List;

/** Gathers faults while a sheet is checked to its end: the first twenty, and how many there are. */
public final class Faults {

    /** A person corrects a sheet in a few goes; more than this is not read. */
    public static final int SHOWN = 20;

    /** In the order of the rows. */
    private final List<Fault> first = new ArrayList<>();

    private int number;

    /** Begins with none. */
    public Faults() {}

    /** Begins with those found before. */
    public Faults(Faults before) {
        first.addAll(before.first);
        number = before.number;
    }

    /** Notes a fault. */
    public void add(Fault fault) {
        number++;
        int place = first.size();
        while (place > 0 && first.get(place - 1).row() > fault.row()) {
            place--;
        }
        if (place < SHOWN) {
            first.add(place, fault);
        }
        if (first.size() > SHOWN) {
            first.remove(SHOWN);
        }
    }

    /** {@return how many there are so far} */
    public int number() {
        return number;
    }

    /** Refuses the whole sheet if there was any fault. */
    public void refuseIfAny() {
        if (number > 0) {
            throw new SheetRefused(first, number);
        }
    }

    /** {@return a refusal for one fault that makes reading on pointless} */
    public static SheetRefused refusal(Fault fault) {
        return new SheetRefused(List.of(fault), 1);
    }

    /** {@return the refusal of a damaged workbook, with what its reader complained about} */
    static SheetRefused broken(Exception cause) {
        SheetRefused refusal = refusal(Fault.ofFile(FaultKind.WORKBOOK_BROKEN));
        refusal.initCause(cause);
        return refusal;
    }
}
