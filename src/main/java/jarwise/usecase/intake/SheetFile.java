package jarwise.usecase.intake;

import jarwise.wire.table.Table;
import jarwise.wire.table.TableReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A sheet's file, read.
 *
 * @param name name of the file, without folders
 * @param fingerprint of all its bytes
 * @param table what stands in it
 */
public record SheetFile(String name, String fingerprint, Table table) {

    /**
     * Reads a file.
     *
     * @param path where it lies
     * @param name what the person called it
     * @param worksheet worksheet of a workbook; the first one if empty
     * @throws jarwise.wire.table.SheetRefused if it is no sheet
     */
    public static SheetFile read(Path path, String name, Optional<String> worksheet) {
        Table table = TableReader.read(path, worksheet);
        try {
            return new SheetFile(name, fingerprint(Files.readAllBytes(path)), table);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return the fingerprint of its column names} */
    String header() {
        List<String> names =
                table.header().stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
        return fingerprint(String.join("\u001f", names).getBytes(StandardCharsets.UTF_8));
    }

    /** {@return what codes of samples without one begin with: the file's name, made short} */
    String shortName() {
        String base = name.replaceFirst("\\.[^.]{1,5}$", "");
        String plain =
                base.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", "-")
                        .replaceAll("^-|-$", "");
        String some = plain.length() > 30 ? plain.substring(0, 30) : plain;
        return some.isEmpty() ? "sheet" : some;
    }

    private static String fingerprint(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
