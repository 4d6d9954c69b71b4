package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the documents say is there, and what is there stands in the documents. */
class DocsTest {

    private static final Path DOCS = Path.of("docs");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)");
    private static final Pattern CODE_WORD = Pattern.compile("`([^`]+)`");
    private static final Pattern COMMAND =
            Pattern.compile("@Command\\(\\s*name\\s*=\\s*\"([a-z -]+)\"");
    private static final Pattern OPTION = Pattern.compile("\"(--[a-z][a-z-]*)\"");

    @Test
    void everyLinkLeadsSomewhere() {
        List<String> broken =
                documents()
                        .flatMap(
                                document ->
                                        LINK.matcher(Sources.text(document))
                                                .results()
                                                .map(link -> link.group(1))
                                                .filter(link -> !link.contains(":"))
                                                .filter(link -> !leadsSomewhere(document, link))
                                                .map(link -> document + ": " + link))
                        .toList();

        assertThat(broken).isEmpty();
    }

    @Test
    void everyCommandAndOptionStandsInTheGuide() {
        String guide =
                Sources.files(DOCS.resolve("guide"), ".md").stream()
                        .map(Sources::text)
                        .collect(Collectors.joining("\n"));
        Set<String> missing = new TreeSet<>();
        for (Path file : Sources.files(Sources.MAIN.resolve("jarwise/cli"), ".java")) {
            String source = Sources.text(file);
            missing.addAll(groups(COMMAND, source));
            missing.addAll(groups(OPTION, source));
        }
        missing.removeIf(word -> standsIn(guide, word));

        assertThat(missing).isEmpty();
    }

    @Test
    void everyPublicClassOfStatsStandsInTheMethods() {
        String methods = Sources.text(DOCS.resolve("methods.md"));
        List<String> missing =
                Sources.files(Sources.MAIN.resolve("jarwise/stats"), ".java").stream()
                        .filter(file -> isPublicType(Sources.text(file)))
                        .map(file -> file.getFileName().toString().replace(".java", ""))
                        .filter(name -> !standsIn(methods, name))
                        .toList();

        assertThat(missing).isEmpty();
    }

    @Test
    void everyWordOfTheGlossaryStandsInTheCode() {
        String code =
                Sources.files(Sources.MAIN, ".java").stream()
                        .map(Sources::text)
                        .collect(Collectors.joining("\n"));
        List<String> missing =
                Sources.lines(DOCS.resolve("glossary.md")).stream()
                        .filter(line -> line.startsWith("|"))
                        .flatMap(line -> groups(CODE_WORD, inCodeColumn(line)).stream())
                        .filter(word -> !standsIn(code, word))
                        .toList();

        assertThat(missing).isEmpty();
    }

    private static Stream<Path> documents() {
        return Stream.concat(
                Sources.files(DOCS, ".md").stream(),
                Stream.of("README.md", "ARCHITECTURE.md", "CONTRIBUTING.md", "CHANGELOG.md")
                        .map(Path::of));
    }

    private static boolean leadsSomewhere(Path document, String link) {
        return Files.exists(document.toAbsolutePath().resolveSibling(link));
    }

    private static Set<String> groups(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map((MatchResult match) -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean standsIn(String text, String word) {
        return Pattern.compile("(?<![\\w-])" + Pattern.quote(word) + "(?![\\w-])")
                .matcher(text)
                .find();
    }

    private static boolean isPublicType(String source) {
        return Pattern.compile("^public .*(class|record|interface|enum) ", Pattern.MULTILINE)
                .matcher(source)
                .find();
    }

    /** The second column of the glossary's table. */
    private static String inCodeColumn(String line) {
        int first = line.indexOf('|', 1);
        return line.substring(first, line.indexOf('|', first + 1));
    }
}
