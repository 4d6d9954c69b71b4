package jarwise.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.Seeds;
import jarwise.base.InvalidInput;
import java.util.PrimitiveIterator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelCodeTest {

    private static final String GOOD = "7K4-M9QS";

    static LongStream seeds() {
        return Seeds.some();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_wrong_symbol_of_a_code_is_found(long seed) {
        String code = LabelCode.next(new SplittableRandom(seed)::nextInt).symbols();
        for (int at = 0; at < code.length(); at++) {
            for (char other : LabelCode.ALPHABET.toCharArray()) {
                if (other != code.charAt(at)) {
                    assertRefused(code.substring(0, at) + other + code.substring(at + 1));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_swap_of_two_neighbours_is_found(long seed) {
        String code = LabelCode.next(new SplittableRandom(seed)::nextInt).symbols();
        for (int at = 0; at + 1 < code.length(); at++) {
            char[] swapped = code.toCharArray();
            swapped[at] = code.charAt(at + 1);
            swapped[at + 1] = code.charAt(at);
            if (!code.equals(new String(swapped))) {
                assertRefused(new String(swapped));
            }
        }
    }

    /**
     * The check is linear, so this holds for all codes at once: a code holds when the sum of weight
     * times value is 1, and no error may change the sum by a multiple of 37.
     */
    @Test
    void no_wrong_symbol_and_no_swap_of_neighbours_leaves_any_code_as_it_was() {
        int[] weights = IntStream.range(0, 7).map(LabelCodeTest::weight).toArray();
        for (int difference = 1; difference < 37; difference++) {
            for (int at = 0; at < 7; at++) {
                assertThat(weights[at] * difference % 37).isNotZero();
                if (at > 0) {
                    int swap = (weights[at - 1] - weights[at]) * difference;
                    assertThat(Math.floorMod(swap, 37)).isNotZero();
                }
            }
        }
    }

    /**
     * The weight of a place: what a 1 there takes from the check character; the last one's is 1.
     */
    private static int weight(int place) {
        int[] one = new int[6];
        if (place == 6) {
            return 1;
        }
        one[place] = 1;
        CheckCharacters check = CheckCharacters.pure(37, 2);
        return Math.floorMod(check.check(new int[6]) - check.check(one), 37);
    }

    @Test
    void a_code_is_drawn_with_its_check_character_and_shown_with_a_hyphen() {
        LabelCode code = LabelCode.next(new SplittableRandom(7)::nextInt);
        assertThat(code.toString()).matches("[0-9A-HJKMNP-TV-Z]{3}-[0-9A-HJKMNP-TV-Z]{4}");
        assertThat(LabelCode.parse(code.toString())).isEqualTo(code);
        assertThat(code.sampleCode().text()).isEqualTo(code.toString());
    }

    @Test
    void a_check_character_that_is_misread_is_never_given_out() {
        PrimitiveIterator.OfInt draws = IntStream.of(0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0).iterator();
        assertThat(LabelCode.checkOf("000001")).isEqualTo('*');
        assertThat(LabelCode.next(below -> draws.nextInt())).hasToString("000-0001");
    }

    @ParameterizedTest
    @ValueSource(strings = {"7k4-m9qs", " 7K4 M9QS ", "7K4M9QS", "7-K-4-M-9-Q-S", "7K4–M9QS"})
    void small_letters_spaces_and_hyphens_do_not_matter(String typed) {
        assertThat(LabelCode.parse(typed)).hasToString(GOOD);
    }

    @Test
    void i_and_l_are_read_as_one_and_o_as_zero() {
        assertThat(LabelCode.parse("OOO-ooo1")).isEqualTo(LabelCode.parse("000-0001"));
        assertThat(LabelCode.parse("000-000I")).isEqualTo(LabelCode.parse("000-000l"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "7K4-M9Q; has 6 symbols",
                "''; has 0 symbols",
                "7K4-M9QSS; has 8 symbols",
                "7K4-U9QS; Maybe it is a V",
                "7K4-M9QÑ; stands on no label",
                "7K4-M9QX; one symbol is wrong or two neighbours are swapped",
                "K74-M9QS; one symbol is wrong or two neighbours are swapped"
            })
    void a_mistake_is_named(String typed, String said) {
        assertThatThrownBy(() -> LabelCode.parse(typed))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(said);
    }

    private static void assertRefused(String symbols) {
        assertThatThrownBy(() -> new LabelCode(symbols))
                .describedAs(symbols)
                .isInstanceOf(InvalidInput.class);
    }
}
