package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Table;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SheetReaderTest {

    @Test
    void keepsZeroBlankAndObscuredApart() {
        CountSheet sheet =
                Sheets.counts("count,bench", "0,a", ",b", "obscured,c", "does not apply,d");

        assertThat(sheet.rows())
                .extracting(row -> row.count().state())
                .containsExactly(
                        CountCell.State.COUNTED,
                        CountCell.State.NOT_READ,
                        CountCell.State.OBSCURED,
                        CountCell.State.DOES_NOT_APPLY);
        assertThat(sheet.notes())
                .extracting(Message::key)
                .containsExactly(
                        "sheet.note.not-read", "sheet.note.obscured", "sheet.note.does-not-apply");
    }

    @Test
    void takesKnownColumnsInAnyOrderAndCase() {
        CountRow row =
                Sheets.counts(
                                "Cells_Total,COUNT,house,Sample,UNITS,cells_read,when",
                                "40,3.0,P1,j-1,2.5,10,noon")
                        .rows()
                        .get(0);

        assertThat(row.count().individuals()).isEqualTo(3);
        assertThat(row.units()).isEqualTo(2.5);
        assertThat(row.filterShare()).isEqualTo(0.25);
        assertThat(row.text(KnownColumn.SAMPLE)).isEqualTo("j-1");
        assertThat(row.others()).isEqualTo(Map.of("when", "noon"));
        assertThat(row.cells()).containsExactly("40", "3.0", "P1", "j-1", "2.5", "10", "noon");
        assertThat(row.row()).isEqualTo(2);
    }

    @Test
    void readsDecimalCommasBetweenSemicolons() {
        CountRow row = Sheets.counts("count;units", "3,0;2,5").rows().get(0);

        assertThat(row.count().individuals()).isEqualTo(3);
        assertThat(row.units()).isEqualTo(2.5);
    }

    @Test
    void readsTabsAndAByteOrderMark() {
        byte[] bytes = "\uFEFFcount\thouse\r\n7\tÑ\r\n".getBytes(StandardCharsets.UTF_8);

        CountRow row = Sheets.counts(Sheets.table(bytes)).rows().get(0);

        assertThat(row.count().individuals()).isEqualTo(7);
        assertThat(row.text(KnownColumn.HOUSE)).isEqualTo("Ñ");
    }

    @Test
    void makesOneRowAStageOfAWideSheet() {
        Table table = Sheets.csv("sample,larva,adult", "j1,3,0", "j2,,5");
        ColumnMapping mapping =
                ColumnMapping.exact(table.header()).withCountColumns(List.of("larva", "Adult"));

        assertThat(Sheets.counts(table, mapping).rows())
                .extracting(
                        CountRow::row,
                        row -> row.text(KnownColumn.STAGE),
                        row -> row.count().isCounted(),
                        row -> row.count().individuals())
                .containsExactly(
                        tuple(2, "larva", true, 3L),
                        tuple(2, "adult", true, 0L),
                        tuple(3, "larva", false, 0L),
                        tuple(3, "adult", true, 5L));
    }

    @Test
    void takesAPersonsOwnNames() {
        Table table = Sheets.csv("TICKS,chicks", "5,2");

        CountRow row =
                Sheets.counts(
                                table,
                                SheetReader.renamed(
                                        table, Map.of("count", "ticks", "units", "chicks")))
                        .rows()
                        .get(0);

        assertThat(row.count().individuals()).isEqualTo(5);
        assertThat(row.units()).isEqualTo(2);
    }

    @Test
    void guessesWhatWasMeantByAMistypedName() {
        Table table = Sheets.csv("ticks,chicks", "5,2");

        assertThat(Sheets.faultsOf(() -> SheetReader.renamed(table, Map.of("count", "tikcs"))))
                .first()
                .extracting(Fault::kind, Fault::arguments)
                .containsExactly(FaultKind.COLUMN_UNKNOWN, List.of("ticks"));
        assertThat(Sheets.faultsOf(() -> SheetReader.renamed(table, Map.of("unit", "chicks"))))
                .first()
                .extracting(Fault::kind, Fault::arguments)
                .containsExactly(FaultKind.COLUMN_NOT_KNOWN_TO_MAP, List.of("units"));
    }

    @Test
    void guessesColumnsInThreeLanguages() {
        assertThat(ColumnMapping.guess(List.of("Growing points", "larvae", "adults", "Jar")))
                .isEqualTo(
                        new ColumnMapping(
                                Map.of(
                                        KnownColumn.UNITS, "Growing points",
                                        KnownColumn.SAMPLE, "Jar"),
                                List.of("larvae", "adults"),
                                Optional.empty()));
        assertThat(ColumnMapping.guess(List.of("Muestra", "brotes", "conteo")).columns())
                .isEqualTo(
                        Map.of(
                                KnownColumn.SAMPLE, "Muestra",
                                KnownColumn.UNITS, "brotes",
                                KnownColumn.COUNT, "conteo"));
        assertThat(ColumnMapping.guess(List.of("Échantillon", "pousses", "stade")).columns())
                .isEqualTo(
                        Map.of(
                                KnownColumn.SAMPLE, "Échantillon",
                                KnownColumn.UNITS, "pousses",
                                KnownColumn.STAGE, "stade"));
    }

    @Test
    void warnsWhenUnitsLieUnused() {
        assertThat(Sheets.counts("count,growing_points", "3,8").notes())
                .containsExactly(Message.of("sheet.note.units-unused", "growing_points"));
    }

    @Test
    void asksForDaysOnlyWhereSamplesAreKept() {
        Table table =
                Sheets.csv(
                        "count,date",
                        "1,2026-03-14",
                        "1,25/3/2026",
                        "1,3/25/2026",
                        "1,3/4/2026",
                        "1,30.2.2026");
        ColumnMapping mapping = ColumnMapping.exact(table.header());

        assertThat(Sheets.counts(table, mapping).rows())
                .extracting(CountRow::date)
                .containsExactly(
                        Optional.of(LocalDate.of(2026, 3, 14)),
                        Optional.of(LocalDate.of(2026, 3, 25)),
                        Optional.of(LocalDate.of(2026, 3, 25)),
                        Optional.empty(),
                        Optional.empty());
        assertThat(Sheets.faultsOf(() -> SheetReader.samples(table, mapping)))
                .extracting(Fault::row, Fault::kind, Fault::arguments)
                .containsExactly(
                        tuple(5, FaultKind.DATE_AMBIGUOUS, List.of("2026-04-03", "2026-03-04")),
                        tuple(6, FaultKind.DATE_UNREADABLE, List.of()));
    }
}
