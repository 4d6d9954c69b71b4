package jarwise.wire.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The columns of one sheet, to be found by the names people use for them.
 *
 * @param headerRow row number of the header
 * @param header names as they stand in the sheet
 * @param mapping what they mean
 */
public record SheetColumns(int headerRow, List<String> header, ColumnMapping mapping) {

    /** Place of the stage in a wide sheet, where it is the name of the column counted. */
    static final int STAGE_OF_WIDE_SHEET = -1;

    /** {@return the place of a meaning in each row, if the sheet has it} */
    public OptionalInt index(KnownColumn known) {
        if (known == KnownColumn.STAGE && !mapping.countColumns().isEmpty()) {
            return OptionalInt.of(STAGE_OF_WIDE_SHEET);
        }
        return mapping.of(known)
                .map(name -> OptionalInt.of(header.indexOf(name)))
                .orElse(OptionalInt.empty());
    }

    /** {@return the place of a column by its meaning, its name, or its name in another case} */
    public OptionalInt index(String name) {
        Optional<KnownColumn> known = KnownColumn.of(name);
        if (known.isPresent() && index(known.get()).isPresent()) {
            return index(known.get());
        }
        int exact = header.indexOf(name);
        if (exact >= 0) {
            return OptionalInt.of(exact);
        }
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equalsIgnoreCase(name)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** {@return every name that {@link #index(String)} finds, to be told to a person} */
    public String names() {
        boolean wide = !mapping.countColumns().isEmpty();
        return String.join(", ", header) + (wide ? ", stage" : "");
    }
}
