package jarwise.wire.table;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.wire.sheet.CountSheet;
import jarwise.wire.sheet.Sheets;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;

class WorkbookTest {

    @Test
    void readsNumbersTextsAndDates() throws IOException {
        byte[] bytes = workbook();

        CountSheet sheet = Sheets.counts(Sheets.table(bytes));

        assertThat(sheet.rows())
                .extracting(row -> row.cells())
                .containsExactly(
                        List.of("j1", "2026-03-14", "8", "33"),
                        List.of("j2", "2026-03-15", "2.5", ""));
        assertThat(sheet.rows()).extracting(row -> row.row()).containsExactly(2, 4);
    }

    @Test
    void usesTheValueOfAFormulaAndSaysSo() throws IOException {
        byte[] bytes =
                replaced(
                        workbook(),
                        "xl/worksheets/sheet1.xml",
                        "<v>33</v>",
                        "<f>SUM(1,2)</f><v>33</v>");

        Table table = Sheets.table(bytes);

        assertThat(table.rows().get(0).cells().get(3)).isEqualTo("33");
        assertThat(table.formulas()).isEqualTo(1);
    }

    @Test
    void refusesAFormulaThatWasNeverWorkedOut() throws IOException {
        byte[] bytes =
                replaced(workbook(), "xl/worksheets/sheet1.xml", "<v>33</v>", "<f>SUM(1,2)</f>");

        assertThat(Sheets.faultsOf(() -> Sheets.counts(Sheets.table(bytes))))
                .first()
                .extracting(Fault::row, Fault::column, Fault::value, Fault::kind)
                .containsExactly(2, "count", "=SUM(1,2)", FaultKind.FORMULA_WITHOUT_VALUE);
    }

    @Test
    void readsTheWorksheetAskedFor() throws IOException {
        byte[] bytes = workbook();

        Table second = TableReader.read(new ByteArrayInputStream(bytes), Optional.of("Second"));

        assertThat(second.header()).containsExactly("count");
        assertThat(
                        Sheets.faultsOf(
                                () ->
                                        TableReader.read(
                                                new ByteArrayInputStream(bytes),
                                                Optional.of("Third"))))
                .first()
                .extracting(Fault::kind, Fault::arguments)
                .containsExactly(FaultKind.WORKSHEET_UNKNOWN, List.of("First, Second"));
    }

    @Test
    void refusesAWorkbookCutOffAnywhere() throws IOException {
        byte[] bytes = workbook();
        for (int length : List.of(30, bytes.length / 4, bytes.length / 2, bytes.length - 5)) {
            byte[] cut = Arrays.copyOf(bytes, length);

            assertThat(Sheets.faultsOf(() -> Sheets.table(cut)))
                    .extracting(Fault::kind)
                    .containsExactly(FaultKind.WORKBOOK_BROKEN);
        }
    }

    @Test
    void refusesAWorkbookInWhichADigitWasDamagedOnItsWay() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "test", "1.0")) {
            workbook.setCompressionLevel(0);
            Worksheet sheet = workbook.newWorksheet("First");
            sheet.value(0, 0, "count");
            sheet.value(1, 0, 33);
        }
        String text = out.toString(StandardCharsets.ISO_8859_1);
        assertThat(text).contains("<v>33</v>");
        byte[] damaged =
                text.replace("<v>33</v>", "<v>83</v>").getBytes(StandardCharsets.ISO_8859_1);

        assertThat(Sheets.table(out.toByteArray()).rows().get(0).cells()).containsExactly("33");
        assertThat(Sheets.faultsOf(() -> Sheets.table(damaged)))
                .extracting(Fault::kind)
                .containsExactly(FaultKind.WORKBOOK_BROKEN);
    }

    @Test
    void refusesAnArchiveThatIsNoWorkbook() throws IOException {
        byte[] bytes = zipped(Map.of("mimetype", bytesOf("application/epub+zip")));

        assertThat(Sheets.faultsOf(() -> Sheets.table(bytes)))
                .extracting(Fault::kind)
                .containsExactly(FaultKind.FILE_NOT_A_SHEET);
    }

    @Test
    void refusesABombBeforeItUnpacks() throws IOException {
        Map<String, byte[]> parts = parts(workbook());
        parts.put("xl/media/zeros.bin", new byte[40 * 1024 * 1024]);

        assertRefusedAsUnsafe(zipped(parts));
    }

    @Test
    void refusesTooManyParts() throws IOException {
        Map<String, byte[]> parts = parts(workbook());
        for (int i = 0; i <= TableLimits.WORKBOOK_PARTS; i++) {
            parts.put("xl/media/" + i, new byte[0]);
        }

        assertRefusedAsUnsafe(zipped(parts));
    }

    @Test
    void refusesEntities() throws IOException {
        String sheet = "xl/worksheets/sheet1.xml";
        String start = new String(parts(workbook()).get(sheet), StandardCharsets.UTF_8);
        String element =
                start.substring(start.indexOf("<worksheet"), start.indexOf("<worksheet") + 10);
        String entity = "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>";

        assertRefusedAsUnsafe(replaced(workbook(), sheet, element, entity + element));
    }

    @Test
    void refusesACellFarBeyondTheLastColumn() throws IOException {
        assertRefusedAsUnsafe(
                replaced(workbook(), "xl/worksheets/sheet1.xml", "r=\"D2\"", "r=\"ZZZZZZ2\""));
    }

    private static void assertRefusedAsUnsafe(byte[] bytes) {
        assertThat(Sheets.faultsOf(() -> Sheets.table(bytes)))
                .extracting(Fault::kind)
                .containsExactly(FaultKind.WORKBOOK_UNSAFE);
    }

    private static byte[] workbook() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "test", "1.0")) {
            Worksheet first = workbook.newWorksheet("First");
            String[] header = {"sample", "date", "units", "count"};
            for (int i = 0; i < header.length; i++) {
                first.value(0, i, header[i]);
            }
            first.value(1, 0, "j1");
            first.value(1, 1, LocalDate.of(2026, 3, 14));
            first.style(1, 1).format("d.m.yyyy").set();
            first.value(1, 2, 8);
            first.value(1, 3, 33);
            first.value(3, 0, "j2");
            first.value(3, 1, LocalDate.of(2026, 3, 15));
            first.style(3, 1).format("yyyy-mm-dd").set();
            first.value(3, 2, 2.5);
            Worksheet second = workbook.newWorksheet("Second");
            second.value(0, 0, "count");
            second.value(1, 0, 7);
        }
        return out.toByteArray();
    }

    private static byte[] replaced(byte[] workbook, String part, String old, String with)
            throws IOException {
        Map<String, byte[]> parts = parts(workbook);
        String text = new String(parts.get(part), StandardCharsets.UTF_8);
        assertThat(text).contains(old);
        parts.put(part, bytesOf(text.replace(old, with)));
        return zipped(parts);
    }

    private static Map<String, byte[]> parts(byte[] workbook) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip =
                ZipFile.builder()
                        .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                        .get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return parts;
    }

    private static byte[] zipped(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    private static byte[] bytesOf(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
