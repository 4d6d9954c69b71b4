package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing in the tree is about one developer's machine or one supplier of libraries. */
class PortableSourcesTest {

    // The brackets keep this line from finding itself.
    private static final Pattern MACHINE =
            Pattern.compile(
                    "(?<![\\w.~])/(wor[k]|hom[e](?!/scout)|roo[t]|User[s]|far[m])/\\w"
                            + "|repo1?[.]mave[n][.]|registry[.]npmj[s]|deb[.]debia[n][.]");

    @Test
    void noFileNamesAMachineOrARegistry() {
        List<String> found =
                Stream.of("src", "docs", ".ci")
                        .flatMap(folder -> Sources.files(Path.of(folder), "").stream())
                        .filter(PortableSourcesTest::isText)
                        .flatMap(PortableSourcesTest::linesThatNameOne)
                        .toList();

        assertThat(found).isEmpty();
    }

    private static Stream<String> linesThatNameOne(Path file) {
        return Sources.lines(file).stream()
                .filter(line -> MACHINE.matcher(line).find())
                .map(line -> file + ": " + line.strip());
    }

    private static boolean isText(Path file) {
        return Pattern.compile("\\.(java|jte|js|css|md|properties|sql|json|csv|R|py|ftl)$")
                .matcher(file.toString())
                .find();
    }
}
