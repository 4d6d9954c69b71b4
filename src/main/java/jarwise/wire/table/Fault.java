package jarwise.wire.table;

import jarwise.base.Message;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing wrong with a sheet, as a value; message files make the sentence.
 *
 * @param row row as a person sees it in the spreadsheet, the header mostly being row 1; 0 if it
 *     concerns the whole file
 * @param column name of the column, or its letter if it has none; empty if none is to blame
 * @param value what stands there, shortened
 * @param kind what is wrong
 * @param arguments what the kind adds: limits, or a guess at what was meant
 */
public record Fault(int row, String column, String value, FaultKind kind, List<String> arguments) {

    private static final int SHOWN_CHARACTERS = 60;

    public Fault {
        value = shown(value);
        arguments = arguments.stream().map(Fault::shown).toList();
    }

    /** {@return a fault in a cell} */
    public static Fault in(
            int row, String column, String value, FaultKind kind, String... arguments) {
        return new Fault(row, column, value, kind, List.of(arguments));
    }

    /** {@return a fault of the file as a whole} */
    public static Fault ofFile(FaultKind kind, String... arguments) {
        return new Fault(0, "", "", kind, List.of(arguments));
    }

    /** {@return its sentence, still in no language} */
    public Message message() {
        List<String> all = new ArrayList<>(List.of(String.valueOf(row), column, value));
        all.addAll(arguments);
        return new Message(kind.key(), all);
    }

    private static String shown(String text) {
        String visible = text.replaceAll("\\p{Cntrl}", "\u00b7");
        return visible.length() <= SHOWN_CHARACTERS
                ? visible
                : visible.substring(0, SHOWN_CHARACTERS) + "\u2026";
    }
}
