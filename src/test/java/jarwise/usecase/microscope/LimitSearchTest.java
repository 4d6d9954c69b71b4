package jarwise.usecase.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.VerdictLimits;
import jarwise.usecase.microscope.LimitSearch.Found;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LimitSearchTest {

    private static final OptionalInt NEVER = OptionalInt.empty();

    @Test
    void findsBothNumbersOfAChanceThatRises() {
        assertThat(search(n -> n <= 37 ? 0.05 : n < 501 ? 0.5 : 0.95)).isEqualTo(found(0, 37, 501));
        assertThat(search(n -> n <= 0 ? 0.05 : n < 2 ? 0.5 : 0.95)).isEqualTo(found(0, 0, 2));
        assertThat(search(n -> n <= 8191 ? 0.01 : 0.99)).isEqualTo(found(0, 8191, 8192));
    }

    @Test
    void saysThereIsNoneWhereThereIsNone() {
        assertThat(search(n -> 0.5)).isEqualTo(new Found(NEVER, NEVER, NEVER));
        assertThat(search(n -> n < 9999 ? 0.5 : 0.96))
                .isEqualTo(new Found(NEVER, NEVER, OptionalInt.of(9999)));
        assertThat(search(n -> 0.01))
                .isEqualTo(new Found(OptionalInt.of(0), OptionalInt.of(10_000), NEVER));
        assertThat(search(n -> 0.99)).isEqualTo(new Found(NEVER, NEVER, OptionalInt.of(0)));
        assertThat(LimitSearch.search(n -> OptionalDouble.empty(), VerdictLimits.STANDARD))
                .isEqualTo(new Found(NEVER, NEVER, NEVER));
    }

    @Test
    void noneAtAllMayBeLessSureThanOne() {
        assertThat(search(n -> n == 0 ? 0.0623 : n <= 4 ? 0.04 : n < 197 ? 0.5 : 0.95))
                .isEqualTo(found(1, 4, 197));
        assertThat(search(n -> n < 3 ? 0.06 : n <= 9 ? 0.04 : n < 60 ? 0.5 : 0.95))
                .isEqualTo(found(3, 9, 60));
    }

    @Test
    void aboveHoldsForAllFromThereOn() {
        assertThat(search(n -> n == 0 ? 0.951 : n < 12 ? 0.9 : 0.97))
                .isEqualTo(new Found(NEVER, NEVER, OptionalInt.of(12)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void findsWhatLookingAtEveryNumberFinds(long seed) {
        Random random = new Random(seed);
        double middle = 1 + random.nextInt(2000);
        double steep = 0.5 + 2 * random.nextDouble();
        IntToDoubleFunction rising = n -> 1 / (1 + Math.pow(middle / (n + 0.5), steep));

        Found found = search(rising);

        int below = -1;
        int above = Integer.MAX_VALUE;
        for (int n = 0; n <= LimitSearch.MOST; n++) {
            double chance = rising.applyAsDouble(n);
            below = chance <= 0.05 ? n : below;
            above = chance >= 0.95 ? Math.min(n, above) : above;
        }
        assertThat(found.below().orElse(-1)).isEqualTo(below);
        assertThat(found.above().orElse(Integer.MAX_VALUE)).isEqualTo(above);
    }

    private static Found search(IntToDoubleFunction chance) {
        return LimitSearch.search(
                n -> OptionalDouble.of(chance.applyAsDouble(n)), VerdictLimits.STANDARD);
    }

    private static Found found(int belowFrom, int below, int above) {
        return new Found(OptionalInt.of(belowFrom), OptionalInt.of(below), OptionalInt.of(above));
    }
}
