package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Table;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RowSelectorTest {

    private static final CountSheet JARS =
            Sheets.counts(
                    "sample,variety,stage,units,count",
                    "j1,Tarn,larva,8,3",
                    "j1,Tarn,adult,8,1",
                    "j2,Tarn,larva,6,0",
                    "j2,Tarn,adult,6,",
                    "j3,Bell,larva,8,2");

    @Test
    void neverAddsUpRowsUnlessAsked() {
        GroupedRows all = RowSelector.select(JARS, SheetSelection.everything());

        assertThat(counts(all)).containsExactly(List.of(3L, 1L, 0L, 2L));
        assertThat(all.notes())
                .containsExactly(Message.of("sheet.note.mixed-stage", "adult, larva"));
    }

    @Test
    void groupsByColumnsInTheOrderAskedFor() {
        GroupedRows groups = RowSelector.select(JARS, by("variety", "Stage"));

        assertThat(groups.groups())
                .extracting(RowGroup::values)
                .containsExactly(
                        Map.of("variety", "Bell", "Stage", "larva"),
                        Map.of("variety", "Tarn", "Stage", "adult"),
                        Map.of("variety", "Tarn", "Stage", "larva"));
        assertThat(counts(groups)).containsExactly(List.of(2L), List.of(1L), List.of(3L, 0L));
        assertThat(groups.notes()).isEmpty();
    }

    @Test
    void addsSamplesUpOnlyIfEveryCountWasRead() {
        GroupedRows groups =
                RowSelector.select(JARS, new SheetSelection(Map.of(), List.of(), true, false));

        assertThat(counts(groups)).containsExactly(List.of(4L, 2L));
        assertThat(groups.notes()).containsExactly(Message.of("sheet.note.samples-in-part", "1"));
    }

    @Test
    void aMissingStageIsAZeroOnlyIfAsked() {
        SheetSelection adults =
                new SheetSelection(
                        Map.of("stage", Set.of("adult")), List.of("variety"), false, true);

        GroupedRows groups = RowSelector.select(JARS, adults);

        assertThat(counts(groups)).containsExactly(List.of(0L), List.of(1L));
        assertThat(groups.groups().get(0).rows().get(0).units()).isEqualTo(8);
        assertThat(groups.notes()).containsExactly(Message.of("sheet.note.zeros-filled", "1"));
    }

    @Test
    void keepsTheRowsAskedFor() {
        GroupedRows groups =
                RowSelector.select(
                        JARS,
                        new SheetSelection(
                                Map.of("sample", Set.of("j1", "j2"), "stage", Set.of("larva")),
                                List.of(),
                                false,
                                false));

        assertThat(counts(groups)).containsExactly(List.of(3L, 0L));
        assertThat(groups.notes()).isEmpty();
    }

    @Test
    void saysWhichValuesThereAreWhenNoneIsKept() {
        SheetSelection typo =
                new SheetSelection(Map.of("stage", Set.of("larvae")), List.of(), false, false);

        assertThat(Sheets.faultsOf(() -> RowSelector.select(JARS, typo)))
                .first()
                .extracting(Fault::kind, Fault::value, Fault::arguments)
                .containsExactly(FaultKind.NO_ROW_KEPT, "larvae", List.of("larva"));
    }

    @Test
    void refusesABlankInAGroupingColumn() {
        Table table = Sheets.csv("count,variety", "1,a", "2,", "3,b");
        ColumnMapping mapping = ColumnMapping.exact(table.header());

        assertThat(
                        Sheets.faultsOf(
                                () ->
                                        SheetReader.counts(
                                                table, mapping, by("variety").neverBlank())))
                .extracting(Fault::row, Fault::column, Fault::kind)
                .containsExactly(tuple(3, "variety", FaultKind.GROUP_BLANK));
    }

    @Test
    void refusesRowsOfASampleThatDoNotAgree() {
        CountSheet sheet =
                Sheets.counts("sample,stage,units,count", "j1,larva,8,1", "j1,adult,6,2");

        assertThat(
                        Sheets.faultsOf(
                                () ->
                                        RowSelector.select(
                                                sheet,
                                                new SheetSelection(
                                                        Map.of(), List.of(), true, false))))
                .first()
                .extracting(Fault::row, Fault::column, Fault::kind)
                .containsExactly(3, "units", FaultKind.SAMPLE_DISAGREES);
    }

    @Test
    void sortsByCodePointWhateverTheOrderOfTheRows() {
        CountSheet sheet =
                Sheets.counts("count,g", "1,\uD83C\uDF3C", "2,\uFB01", "3,b", "4,B", "5,10", "6,9");

        assertThat(RowSelector.select(sheet, by("g")).groups())
                .extracting(group -> group.values().get("g"))
                .containsExactly("10", "9", "B", "b", "\uFB01", "\uD83C\uDF3C");
    }

    private static SheetSelection by(String... columns) {
        return new SheetSelection(Map.of(), List.of(columns), false, false);
    }

    private static List<List<Long>> counts(GroupedRows groups) {
        return groups.groups().stream()
                .map(group -> group.rows().stream().map(row -> row.count().individuals()).toList())
                .toList();
    }
}
