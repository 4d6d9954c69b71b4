package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Table;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TemplateSheetTest {

    private final TemplateSheet template =
            new TemplateSheet(column -> "what goes into " + column.text());

    @Test
    void isReadBackAsCsvAndAsWorkbook() {
        Table csv = Sheets.table(template.csv());
        Table workbook = Sheets.table(template.xlsx());

        List<String> known = Arrays.stream(KnownColumn.values()).map(KnownColumn::text).toList();
        assertThat(csv.header()).isEqualTo(known);
        assertThat(workbook.header()).isEqualTo(known);
        assertThat(workbook.rows()).isEqualTo(csv.rows());
    }

    @Test
    void isRefusedWhileItsExplanationStandsInIt() {
        assertThat(Sheets.faultsOf(() -> Sheets.counts(Sheets.table(template.csv()))))
                .extracting(Fault::row, Fault::kind)
                .contains(tuple(2, FaultKind.EXPLANATION_LEFT));
    }

    @Test
    void isTakenOnceFilledIn() {
        String header = new String(template.csv(), StandardCharsets.UTF_8).lines().toList().get(0);
        String row = "j1,2026-03-14,P1,P1-B3,Gerbera,Rubia Tarn,wash,8,20,40,FRANOC,larva,0,SC-1";

        assertThat(Sheets.counts(header, row).rows())
                .extracting(r -> r.count().isCounted(), CountRow::filterShare)
                .containsExactly(tuple(true, 0.5));
    }
}
