package jarwise;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads the source tree for the tests that hold it to the house's rules. */
public final class Sources {

    public static final Path MAIN = Path.of("src/main/java");
    public static final Path TESTS = Path.of("src/test/java");
    public static final Path RESOURCES = Path.of("src/main/resources");
    public static final Path TEMPLATES = Path.of("src/main/jte");

    private Sources() {}

    /** {@return the files under a folder whose names end so, sorted; none if there is no folder} */
    public static List<Path> files(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return the text of a file} */
    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return the lines of a file} */
    public static List<String> lines(Path file) {
        return text(file).lines().toList();
    }
}
