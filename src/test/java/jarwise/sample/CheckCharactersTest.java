package jarwise.sample;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.stats.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CheckCharactersTest {

    private static final String STANDARD = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

    static List<ReferenceTable.Row> published() {
        return ReferenceTable.read("check-characters/published.csv");
    }

    @ParameterizedTest
    @MethodSource("published")
    void a_published_check_character_comes_out(ReferenceTable.Row row) {
        int modulus = (int) row.number("modulus");
        CheckCharacters system =
                row.has("radix")
                        ? CheckCharacters.pure(modulus, (int) row.number("radix"))
                        : CheckCharacters.hybrid(modulus);
        int[] values = row.text("characters").chars().map(STANDARD::indexOf).toArray();
        assertThat(system.check(values)).isEqualTo((int) row.number("check"));
    }

    /** Why labels do not use the hybrid system, for which 32 symbols would be enough. */
    @Test
    void the_hybrid_system_of_32_symbols_misses_some_swaps_of_neighbours() {
        CheckCharacters hybrid = CheckCharacters.hybrid(32);
        int missed = 0;
        for (int a = 0; a < 32; a++) {
            for (int b = a + 1; b < 32; b++) {
                missed += hybrid.check(a, b) == hybrid.check(b, a) ? 1 : 0;
            }
        }
        assertThat(missed).isEqualTo(1); // of 496 pairs; own arithmetic
    }

    @Test
    void the_hybrid_system_of_32_symbols_finds_every_single_error() {
        CheckCharacters hybrid = CheckCharacters.hybrid(32);
        for (int after = 0; after < 32; after++) {
            final int then = after;
            IntStream checks = IntStream.range(0, 32).map(a -> hybrid.check(a, then));
            assertThat(checks.distinct().count()).isEqualTo(32);
        }
    }
}
