package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.SheetRefused;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NumberSheetTest {

    private static NumberColumns columns(String... numbers) {
        return new NumberColumns(List.of(numbers), List.of(), Map.of());
    }

    @Test
    void readsNamedColumnsInAnyCaseAndLeavesBlanksOut() {
        NumberSheet sheet =
                NumberSheet.read(
                        Sheets.csv("Reader;Found;KNOWN\nA;9;12\n\nB;;12\nB;3,0;4\n"),
                        new NumberColumns(List.of("known", "found"), List.of("reader"), Map.of()));

        assertThat(sheet.rows())
                .containsExactly(
                        new NumberSheet.Row(2, List.of(12L, 9L), List.of("A")),
                        new NumberSheet.Row(5, List.of(4L, 3L), List.of("B")));
        assertThat(sheet.notes()).hasSize(2);
    }

    @Test
    void keepsTheRowsAskedFor() {
        NumberColumns larvae =
                new NumberColumns(List.of("n"), List.of(), Map.of("stage", Set.of("larva")));

        assertThat(NumberSheet.read(Sheets.csv("stage,n\nlarva,3\nadult,4\n"), larvae).rows())
                .containsExactly(new NumberSheet.Row(2, List.of(3L), List.of()));
        assertFaults("stage,n\nadult,4\n", larvae, FaultKind.NUMBER_NOWHERE);
    }

    @Test
    void tellsEveryFault() {
        assertFaults("a,b\n1,2\n", columns("a", "c"), FaultKind.COLUMN_UNKNOWN);
        assertFaults("a,b\n1,2\n", columns("a", "A"), FaultKind.COLUMN_MEANT_TWICE);
        assertFaults(
                "a,b\n-1,2\n1.5,x\n1,\"1,000\"\n",
                columns("a", "b"),
                FaultKind.COUNT_NEGATIVE,
                FaultKind.COUNT_NOT_WHOLE,
                FaultKind.COUNT_NOT_A_NUMBER,
                FaultKind.NUMBER_GROUPED);
        assertFaults("a,b\n,\n1\n", columns("a"), FaultKind.CELLS_MISSING);
        assertFaults(
                "a,b\n1,\n",
                new NumberColumns(List.of("a"), List.of("b"), Map.of()),
                FaultKind.GROUP_BLANK);
    }

    private static void assertFaults(String text, NumberColumns columns, FaultKind... kinds) {
        assertThatThrownBy(() -> NumberSheet.read(Sheets.csv(text), columns))
                .isInstanceOfSatisfying(
                        SheetRefused.class,
                        refused ->
                                assertThat(refused.faults().stream().map(Fault::kind))
                                        .containsExactly(kinds));
    }
}
