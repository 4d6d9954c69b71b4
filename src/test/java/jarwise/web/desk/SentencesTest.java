package jarwise.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.web.piece.Unbroken;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a sentence is set on a narrow page. */
class SentencesTest {

    @Test
    void aCodeIsKeptOnOneLine() {
        assertThat(codes("Larvae are above the line on P1-B5, and on H2-B4."))
                .isEqualTo(List.of("P1-B5,", "H2-B4."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "two-spotted spider mite",
                "a – b",
                "10 jars",
                "a-house-with-a-name-of-40-characters-x1",
                ""
            })
    void otherWordsMayBreak(String sentence) {
        assertThat(codes(sentence)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"on P1-B5.", " P1-B5 ", "P1-B5", "P1-B5 P1-B6", "", "nothing  here"})
    void nothingIsLost(String sentence) {
        assertThat(Unbroken.of(sentence).stream().map(Unbroken::text).collect(Collectors.joining()))
                .isEqualTo(sentence);
    }

    private static List<String> codes(String sentence) {
        return Unbroken.of(sentence).stream().filter(Unbroken::code).map(Unbroken::text).toList();
    }
}
