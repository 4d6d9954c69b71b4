package jarwise.wire.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads a table by what the file is, not by what its name ends in. */
public final class TableReader {

    private static final int[] ZIP = {'P', 'K', 3, 4};
    private static final int[] OLD_WORKBOOK = {0xD0, 0xCF, 0x11, 0xE0};

    private TableReader() {}

    /**
     * Reads a file.
     *
     * @param file CSV or xlsx
     * @param worksheet name of the worksheet; the first one if empty, and no matter in CSV
     * @return the table, its shape checked
     * @throws SheetRefused if it cannot be read whole
     */
    public static Table read(Path file, Optional<String> worksheet) {
        if (!Files.isRegularFile(file)) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_NOT_FOUND, file.toString()));
        }
        try (InputStream in = Files.newInputStream(file)) {
            long size = Files.size(file);
            if (size > TableLimits.BYTES) {
                throw tooLarge();
            }
            return read(in, worksheet);
        } catch (IOException e) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_UNREADABLE, file.toString()));
        }
    }

    /**
     * Reads what a page sends up.
     *
     * @param in CSV or xlsx; not closed
     * @param worksheet name of the worksheet; the first one if empty, and no matter in CSV
     * @return the table, its shape checked
     * @throws IOException if the stream breaks off
     * @throws SheetRefused if it cannot be read whole
     */
    public static Table read(InputStream in, Optional<String> worksheet) throws IOException {
        byte[] bytes = in.readNBytes(TableLimits.BYTES + 1);
        if (bytes.length > TableLimits.BYTES) {
            throw tooLarge();
        }
        if (bytes.length == 0) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_EMPTY));
        }
        if (startsWith(bytes, OLD_WORKBOOK)) {
            throw Faults.refusal(Fault.ofFile(FaultKind.WORKBOOK_OLD));
        }
        return startsWith(bytes, ZIP) ? XlsxTable.read(bytes, worksheet) : CsvTable.read(bytes);
    }

    private static SheetRefused tooLarge() {
        String limitMb = String.valueOf(TableLimits.BYTES / (1024 * 1024));
        return Faults.refusal(Fault.ofFile(FaultKind.FILE_TOO_LARGE, limitMb));
    }

    private static boolean startsWith(byte[] bytes, int[] signature) {
        if (bytes.length < signature.length) {
            return false;
        }
        for (int i = 0; i < signature.length; i++) {
            if ((bytes[i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }
}
