package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The list of licences belongs to the libraries in use. `./dev check` also compares it whole with
 * what the build makes.
 */
class LicencesTest {

    private static final String ADVICE = "docs/licences.md; ./dev licences writes it anew";
    private static final Pattern DEPENDENCY =
            Pattern.compile("<dependency>.*?</dependency>", Pattern.DOTALL);
    private static final Pattern COORDINATES =
            Pattern.compile("<groupId>([^<]*)</groupId>\\s*<artifactId>([^<]*)</artifactId>");
    private static final Pattern ROW =
            Pattern.compile("\\| `([^:`]+):([^`]+)` \\| (\\S+) \\| .* \\| (\\S.*) \\|");

    @Test
    void everyLibraryOfTheListIsInUseInThatVersion() throws IOException {
        List<String> jars =
                Pattern.compile(File.pathSeparator)
                        .splitAsStream(System.getProperty("java.class.path"))
                        .map(path -> Path.of(path).getFileName().toString())
                        .toList();

        assertThat(rows())
                .as(ADVICE)
                .extracting(row -> row.group(2) + "-" + row.group(3) + ".jar")
                .isNotEmpty()
                .isSubsetOf(jars);
    }

    @Test
    void everyLibraryOfThePomThatIsShippedHasALicence() throws IOException {
        List<String> listed = rows().map(row -> row.group(1) + ":" + row.group(2)).toList();

        assertThat(shippedArtifacts()).as(ADVICE).isNotEmpty().isSubsetOf(listed);
    }

    @Test
    void theNoticeNamesTheSameLibraries() throws IOException {
        String notice = Files.readString(Path.of("NOTICE"));

        assertThat(rows())
                .extracting(
                        row ->
                                "%s:%s %s: %s"
                                        .formatted(
                                                row.group(1),
                                                row.group(2),
                                                row.group(3),
                                                row.group(4)))
                .allSatisfy(line -> assertThat(notice).contains(line));
    }

    private static Stream<MatchResult> rows() throws IOException {
        return ROW.matcher(Files.readString(Path.of("docs/licences.md"))).results();
    }

    private static List<String> shippedArtifacts() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        // What only plugins use stands inside <build> and is not shipped.
        return DEPENDENCY
                .matcher(pom.substring(0, pom.indexOf("<build>")))
                .results()
                .map(MatchResult::group)
                .filter(dependency -> !dependency.contains("<scope>test"))
                .map(LicencesTest::coordinates)
                .toList();
    }

    private static String coordinates(String dependency) {
        Matcher matcher = COORDINATES.matcher(dependency);
        assertThat(matcher.find()).as(dependency).isTrue();
        return matcher.group(1) + ":" + matcher.group(2);
    }
}
