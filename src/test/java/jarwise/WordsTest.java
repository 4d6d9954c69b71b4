package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The message files: complete, used, translated, and patterns that can be filled in. */
class WordsTest {

    private static final List<String> LANGUAGES = List.of("en", "es", "fr");
    private static final Pattern LITERAL = Pattern.compile("[\"'`]([a-z][a-z0-9.-]*[a-z0-9.-])");
    private static final Pattern WHOLE_KEY =
            Pattern.compile("[\"'`]([a-z][a-z0-9-]*(?:\\.[a-z0-9-]*[a-z0-9])+)[\"'`]");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");
    private static final Pattern LONE_APOSTROPHE = Pattern.compile("(?<!')'(?!['{}])(?<!['{}]')");
    private static final Set<String> FILE_ENDINGS =
            Set.of(
                    "jte", "js", "css", "svg", "csv", "json", "geojson", "html", "pdf", "db",
                    "xlsx", "txt", "ics");

    /** Keys that may read the same in two languages, each with its reason. */
    private static final String SAME_ON_PURPOSE = "src/test/resources/words/same.properties";

    private final Map<String, String> english = texts("en");

    @Test
    void everyLanguageHasTheSameKeys() {
        for (String language : LANGUAGES) {
            assertThat(texts(language).keySet()).as(language).isEqualTo(english.keySet());
        }
    }

    @Test
    void noKeyStandsTwiceInAFile() {
        for (String language : LANGUAGES) {
            assertThat(keysAsWritten(language)).as(language).doesNotHaveDuplicates();
        }
    }

    @Test
    void everyKeyThatTheProgramNamesExists() {
        Set<String> sections =
                english.keySet().stream().map(WordsTest::section).collect(Collectors.toSet());
        List<String> missing =
                sources()
                        .flatMap(text -> WHOLE_KEY.matcher(text).results())
                        .map(match -> match.group(1))
                        .filter(key -> sections.contains(section(key)))
                        .filter(key -> !FILE_ENDINGS.contains(ending(key)))
                        .filter(key -> !english.containsKey(key))
                        .distinct()
                        .toList();

        assertThat(missing).isEmpty();
    }

    @Test
    void everyKeyIsUsed() {
        Set<String> literals =
                sources()
                        .flatMap(text -> LITERAL.matcher(text).results())
                        .map(match -> match.group(1))
                        .collect(Collectors.toSet());
        Set<String> unused = new TreeSet<>(english.keySet());
        unused.removeIf(key -> literals.contains(key) || isBuiltFromPrefix(key, literals));

        assertThat(unused).isEmpty();
    }

    @Test
    void everyTextCanBeFilledIn() {
        for (String language : LANGUAGES) {
            texts(language)
                    .forEach(
                            (key, text) -> {
                                assertThat(new MessageFormat(text).getFormats())
                                        .as(language + " " + key)
                                        .isNotNull();
                                assertThat(LONE_APOSTROPHE.matcher(text).find())
                                        .as(language + " " + key + ": an apostrophe is doubled")
                                        .isFalse();
                            });
        }
    }

    @Test
    void everyLanguageHasTheSamePlaces() {
        for (String language : LANGUAGES) {
            texts(language)
                    .forEach(
                            (key, text) ->
                                    assertThat(places(text))
                                            .as(language + " " + key)
                                            .isEqualTo(places(english.getOrDefault(key, ""))));
        }
    }

    @Test
    void sentencesAreTranslated() {
        Map<String, String> sameOnPurpose = properties(Sources.text(Path.of(SAME_ON_PURPOSE)));
        List<String> untranslated = new ArrayList<>();
        for (String language : List.of("es", "fr")) {
            texts(language)
                    .forEach(
                            (key, text) -> {
                                if (text.equals(english.get(key))
                                        && words(text) > 3
                                        && !sameOnPurpose.containsKey(key)) {
                                    untranslated.add(language + " " + key);
                                }
                            });
        }

        assertThat(untranslated).isEmpty();
    }

    private static Stream<String> sources() {
        return Stream.of(
                        Sources.files(Sources.MAIN, ".java"),
                        Sources.files(Sources.TEMPLATES, ".jte"),
                        Sources.files(Sources.RESOURCES, ".js"))
                .flatMap(List::stream)
                .map(Sources::text);
    }

    /** Some keys are put together: {@code say("verdict." + name)}, {@code counted("jars", 3)}. */
    private static boolean isBuiltFromPrefix(String key, Set<String> literals) {
        for (int end = key.indexOf('.') + 1; end < key.length(); end++) {
            char next = key.charAt(end);
            boolean joint = next == '.' || next == '-' || ".-".indexOf(key.charAt(end - 1)) >= 0;
            if (joint && literals.contains(key.substring(0, end))) {
                return true;
            }
        }
        return false;
    }

    private static String section(String key) {
        return key.substring(0, key.indexOf('.'));
    }

    private static String ending(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static long words(String text) {
        return Pattern.compile("\\p{L}+").matcher(text).results().count();
    }

    private static Map<String, String> texts(String language) {
        return properties(Sources.text(file(language)));
    }

    private static List<String> keysAsWritten(String language) {
        return Sources.lines(file(language)).stream()
                .filter(line -> !line.startsWith("#") && line.contains("="))
                .map(line -> line.substring(0, line.indexOf('=')).strip())
                .toList();
    }

    private static Path file(String language) {
        return Sources.RESOURCES.resolve("words").resolve(language + ".properties");
    }

    private static Map<String, String> properties(String text) {
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> sorted = new TreeMap<>();
        properties.forEach((key, value) -> sorted.put((String) key, (String) value));
        return sorted;
    }
}
