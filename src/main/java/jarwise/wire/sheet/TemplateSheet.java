package jarwise.wire.sheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * An empty sheet to fill in: the known columns, and one row that explains them. The row is not
 * data: it is there to be deleted, and a sheet that still has it is refused with these words.
 *
 * @param explanations what to write in each column, in a person's language
 */
public record TemplateSheet(Function<KnownColumn, String> explanations) {

    /** Begins the explanation of the count; no count begins so. */
    static final String EXPLANATION_MARK = "?";

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final double COLUMN_WIDTH = 24;

    /**
     * {@return CSV in UTF-8; the mark in front keeps spreadsheets from guessing another encoding}
     */
    public byte[] csv() {
        StringWriter text = new StringWriter().append(BYTE_ORDER_MARK);
        try (CsvWriter rows = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            rows.writeRecord(names()).writeRecord(explained());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** {@return a workbook with one worksheet} */
    public byte[] xlsx() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Jarwise", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("counts");
            List<String> names = names();
            List<String> explained = explained();
            for (int i = 0; i < names.size(); i++) {
                sheet.value(0, i, names.get(i));
                sheet.style(0, i).bold().set();
                sheet.value(1, i, explained.get(i));
                sheet.style(1, i).italic().wrapText(true).set();
                sheet.width(i, COLUMN_WIDTH);
            }
            sheet.freezePane(0, 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static List<String> names() {
        return Arrays.stream(KnownColumn.values()).map(KnownColumn::text).toList();
    }

    private List<String> explained() {
        return Arrays.stream(KnownColumn.values())
                .map(
                        column ->
                                column == KnownColumn.COUNT
                                        ? EXPLANATION_MARK + " " + explanations.apply(column)
                                        : explanations.apply(column))
                .toList();
    }
}
