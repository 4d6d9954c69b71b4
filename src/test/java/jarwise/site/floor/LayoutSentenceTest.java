package jarwise.site.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutSentenceTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "6 benches × 4 bays | 6 6 6 6",
                "4 bays x 6 benches | 6 6 6 6",
                "4 BAYS X 6 BENCHES | 6 6 6 6",
                "4bays*6benches | 6 6 6 6",
                "4 bays × 6 | 6 6 6 6",
                "6 × 4 bays | 6 6 6 6",
                "4 bays of 6 benches each | 6 6 6 6",
                "4 bays, 6 benches each | 6 6 6 6",
                "4 bays with 6 benches in each bay | 6 6 6 6",
                "four bays by six benches | 6 6 6 6",
                "2 bays of 6 benches, 1 bay of 8 | 6 6 8",
                "1 bay of 3 benches and 2 bays of 5 benches | 3 5 5",
                "7 benches | 7",
                "3 tables, 2 bays of 5 | 3 5 5",
                "4 naves de 6 mesas | 6 6 6 6",
                "6 mesas por 4 naves | 6 6 6 6",
                "4 naves con 6 mesas cada una | 6 6 6 6",
                "cuatro bahías de seis mesas | 6 6 6 6",
                "2 secciones de 5 bancales y 1 sección de 9 | 5 5 9",
                "4 travées × 6 tables | 6 6 6 6",
                "6 tablettes par 4 travées | 6 6 6 6",
                "4 travées de 6 tables chacune | 6 6 6 6",
                "quatre chapelles de six tables | 6 6 6 6",
                "2 travées de 6 tables puis 1 travée de 8 tables | 6 6 8",
            })
    void understandsTheWordsOfThreeLanguages(String typed, String expected) {
        List<Integer> benches = Arrays.stream(expected.split(" ")).map(Integer::valueOf).toList();

        assertThat(LayoutSentence.read(typed).benchesOfBay()).isEqualTo(benches);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "4 × 6 | map.layout.two-ways",
                "4 bays × 6 bays | map.layout.twice",
                "4 bays | map.layout.benches",
                "4 bays and 6 benches | map.layout.benches",
                "12 | map.layout.benches",
                "bays × 6 benches | map.layout.number",
                "4 bays benches | map.layout.number",
                "4 bays × 6 pots | map.layout.word",
                "−4 bays × 6 benches | map.layout.word",
                "0 bays × 6 benches | map.layout.many",
                "4 bays × 0 benches | map.layout.many",
                "40 bays × 600 benches | map.layout.many",
                "99999999999999999999 bays × 2 benches | map.layout.many",
                "'' | form.needed",
            })
    void saysWhatItDoesNotUnderstand(String typed, String key) {
        assertThatThrownBy(() -> LayoutSentence.read(typed))
                .isInstanceOfSatisfying(
                        LayoutRefused.class,
                        refused -> assertThat(refused.reason().key()).isEqualTo(key));
    }

    @Test
    void namesBothReadingsOfTwoBareNumbers() {
        LayoutRefused refused = (LayoutRefused) catchThrowable(() -> LayoutSentence.read("4 × 6"));

        assertThat(refused.reason().arguments()).containsExactly("4 × 6", "4", "6");
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void readsBackWhateverIsWrittenInAnyLanguageAndOrder(long seed) {
        Random random = new Random(seed);
        List<Integer> written =
                IntStream.range(0, 1 + random.nextInt(5))
                        .mapToObj(i -> 1 + random.nextInt(30))
                        .toList();

        assertThat(LayoutSentence.read(sentence(written, random)).benchesOfBay())
                .isEqualTo(written);
    }

    private static String sentence(List<Integer> benches, Random random) {
        String[][] nouns = {{"bay", "benches"}, {"nave", "mesas"}, {"travée", "tables"}};
        String[] signs = {" × ", "x", " by ", " de ", " * "};
        String[] noun = nouns[random.nextInt(nouns.length)];
        return benches.stream()
                .map(
                        number -> {
                            String bay = "1 " + noun[0];
                            String bench = number + " " + noun[1];
                            String sign = " " + signs[random.nextInt(signs.length)] + " ";
                            return random.nextBoolean() ? bay + sign + bench : bench + sign + bay;
                        })
                .collect(Collectors.joining(random.nextBoolean() ? ", " : " + "));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void readsOrRefusesAnythingThatCanBeTyped(long seed) {
        Random random = new Random(seed);
        String signs = "0123456789 ×x,.;benchsaymt'é -\"\u2028😀";
        String typed =
                random.ints(random.nextInt(40), 0, signs.length())
                        .mapToObj(i -> String.valueOf(signs.charAt(i)))
                        .collect(Collectors.joining());

        Throwable thrown = catchThrowable(() -> LayoutSentence.read(typed));

        if (thrown != null) {
            assertThat(thrown).isInstanceOf(LayoutRefused.class);
        } else {
            assertThat(LayoutSentence.read(typed).benches()).isPositive();
        }
    }
}
