package jarwise.wire.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;

/** Reads CSV: UTF-8, separator guessed from the header row. */
final class CsvTable {

    private static final String SEPARATORS = ",;\t";
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private CsvTable() {}

    static Table read(byte[] bytes) {
        String text = decoded(bytes);
        char separator = guessedSeparator(text);
        TableBuilder table = new TableBuilder(separator == ';');
        int row = 0;
        try (CsvReader<CsvRecord> records = reader(text, separator)) {
            Iterator<CsvRecord> iterator = records.iterator();
            while (iterator.hasNext()) {
                row++;
                List<String> cells = iterator.next().getFields();
                boolean emptyLine = cells.size() == 1 && cells.get(0).isEmpty();
                // A blank line is a blank cell in a sheet of one column, nothing in a wider one.
                table.add(row, cells, emptyLine);
            }
        } catch (CsvParseException e) {
            table.faults().add(Fault.in(row + 1, "", "", FaultKind.QUOTE_UNCLOSED));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table.build();
    }

    private static CsvReader<CsvRecord> reader(String text, char separator) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
    }

    private static String decoded(byte[] bytes) {
        if (looksLikeUtf16(bytes)) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_UTF16));
        }
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            if (looksBinary(bytes)) {
                throw Faults.refusal(Fault.ofFile(FaultKind.FILE_NOT_A_SHEET));
            }
            long row = 1 + text.chars().filter(c -> c == '\n').count();
            throw Faults.refusal(Fault.in((int) row, "", "", FaultKind.FILE_NOT_UTF8));
        }
        if (text.hasRemaining() && text.charAt(0) == BYTE_ORDER_MARK) {
            text.get();
        }
        return text.toString();
    }

    /** A byte order mark, or a zero in every second of the first bytes. */
    private static boolean looksLikeUtf16(byte[] bytes) {
        if (bytes.length < 4) {
            return false;
        }
        int first = ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
        boolean zeroFirst = bytes[0] == 0 && bytes[1] != 0 && bytes[2] == 0;
        boolean zeroSecond = bytes[0] != 0 && bytes[1] == 0 && bytes[2] != 0 && bytes[3] == 0;
        return first == 0xFEFF || first == 0xFFFE || zeroFirst || zeroSecond;
    }

    private static boolean looksBinary(byte[] bytes) {
        int looked = Math.min(bytes.length, 1000);
        int odd = 0;
        for (int i = 0; i < looked; i++) {
            if (bytes[i] >= 0 && bytes[i] < ' ' && "\t\r\n".indexOf(bytes[i]) < 0) {
                odd++;
            }
        }
        return odd * 20 > looked;
    }

    /** {@return the separator that stands most often, outside quotes, in the first row} */
    private static char guessedSeparator(String text) {
        int[] seen = new int[SEPARATORS.length()];
        boolean quoted = false;
        boolean anything = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r') && anything) {
                break;
            } else if (!quoted && SEPARATORS.indexOf(c) >= 0) {
                seen[SEPARATORS.indexOf(c)]++;
            }
            anything |= !Character.isWhitespace(c);
        }
        int most = 0;
        for (int i = 1; i < seen.length; i++) {
            most = seen[i] > seen[most] ? i : most;
        }
        return SEPARATORS.charAt(most);
    }
}
