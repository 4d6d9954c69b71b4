package jarwise.usecase.intake;

import jarwise.base.Message;
import jarwise.base.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Keeps a sheet between its preview and its import, so that nothing is sent twice. What nobody came
 * back for within a day goes.
 */
public final class UploadShelf {

    private static final long LARGEST_BYTES = 50L * 1024 * 1024;
    private static final int MOST_FILES = 40;
    private static final Duration KEPT = Duration.ofDays(1);
    private static final String NAME = ".name";

    private final Path folder;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    /**
     * Uses a folder, made when first needed.
     *
     * @param folder where the sheets lie
     */
    public UploadShelf(Path folder, InstantSource clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * A sheet on the shelf.
     *
     * @param id what it is asked for by
     * @param path where it lies
     * @param name what the person's file is called
     */
    public record Kept(String id, Path path, String name) {}

    /**
     * Puts a sheet on the shelf.
     *
     * @param in its bytes; not closed
     * @param name the person's name for the file; folders in it are cut off
     * @throws Refused if it is too large
     */
    public Kept keep(InputStream in, String name) {
        try {
            Files.createDirectories(folder);
            clear();
            byte[] bytes = new byte[16];
            random.nextBytes(bytes);
            String id = HexFormat.of().formatHex(bytes);
            Path path = folder.resolve(id);
            if (!copy(in, path)) {
                Files.delete(path);
                throw new Refused(Message.of("import.too-large"));
            }
            String plain = plainName(name);
            Files.writeString(folder.resolve(id + NAME), plain);
            return new Kept(id, path, plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * {@return the sheet with this id}
     *
     * @throws Refused if it is no longer there
     */
    public Kept find(String id) {
        Path path = folder.resolve(id.matches("[0-9a-f]{32}") ? id : "none");
        Path name = folder.resolve(path.getFileName() + NAME);
        if (!Files.isRegularFile(path) || !Files.isRegularFile(name)) {
            throw new Refused(Message.of("import.not-kept"));
        }
        try {
            return new Kept(id, path, Files.readString(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes a sheet off the shelf. */
    public void drop(Kept kept) {
        try {
            Files.deleteIfExists(kept.path());
            Files.deleteIfExists(folder.resolve(kept.id() + NAME));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean copy(InputStream in, Path path) throws IOException {
        try (OutputStream out = Files.newOutputStream(path)) {
            byte[] buffer = new byte[64 * 1024];
            long size = 0;
            int read = in.read(buffer);
            while (read >= 0 && size <= LARGEST_BYTES) {
                out.write(buffer, 0, read);
                size += read;
                read = in.read(buffer);
            }
            return size <= LARGEST_BYTES;
        }
    }

    /** A browser may send whole paths, and a stranger anything. */
    private static String plainName(String name) {
        String last = name.replaceAll("^.*[/\\\\]", "").replaceAll("\\p{Cntrl}", "").strip();
        String some = last.length() > 120 ? last.substring(last.length() - 120) : last;
        return some.isEmpty() ? "sheet" : some;
    }

    private void clear() throws IOException {
        List<Path> files;
        try (Stream<Path> list = Files.list(folder)) {
            files = list.filter(path -> !path.toString().endsWith(NAME)).toList();
        }
        int tooMany = files.size() - MOST_FILES + 1;
        List<Path> oldestFirst =
                files.stream().sorted((a, b) -> Long.compare(age(b), age(a))).toList();
        for (int i = 0; i < oldestFirst.size(); i++) {
            Path path = oldestFirst.get(i);
            if (i < tooMany || age(path) > KEPT.toMillis()) {
                Files.deleteIfExists(path);
                Files.deleteIfExists(folder.resolve(path.getFileName() + NAME));
            }
        }
    }

    private long age(Path path) {
        try {
            return clock.millis() - Files.getLastModifiedTime(path).toMillis();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
