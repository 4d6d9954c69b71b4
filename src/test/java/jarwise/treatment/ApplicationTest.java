package jarwise.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ApplicationTest {

    private static final Instant END = Instant.parse("2026-04-16T17:30:00Z");

    @Test
    void theLongestIntervalOfATankMixCounts() {
        Application mix = mix(Optional.of(END), product("A", 4), product("B", 12));

        assertThat(mix.reentryEnds()).contains(END.plus(Duration.ofHours(12)));
        assertThat(mix.mayBeEntered(END.plus(Duration.ofHours(12)).minusSeconds(1))).isFalse();
        assertThat(mix.mayBeEntered(END.plus(Duration.ofHours(12)))).isTrue();
    }

    @Test
    void nobodyMayEnterWhileAnyIntervalIsUnknown() {
        ProductUse unknown =
                new ProductUse(
                        "C",
                        Optional.empty(),
                        List.of(),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty());
        Application mix = mix(Optional.of(END), product("A", 4), unknown);

        assertThat(mix.reentryEnds()).isEmpty();
        assertThat(mix.mayBeEntered(END.plus(Duration.ofDays(1000)))).isFalse();
    }

    @Test
    void nobodyMayEnterBeforeTheEndIsNoted() {
        Application running = mix(Optional.empty(), product("A", 4));

        assertThat(running.mayBeEntered(END.plus(Duration.ofDays(1000)))).isFalse();
    }

    @Test
    void withoutBenchesTheWholeHouseIsMeant() {
        Application house =
                new Application(
                        "T9",
                        "P1",
                        Set.of(),
                        END,
                        Optional.of(END),
                        List.of(product("A", 4)),
                        "",
                        "AP-1",
                        "");

        assertThat(house.covers("P1", "P1-B3")).isTrue();
        assertThat(house.covers("H2", "H2-B4")).isFalse();
        assertThat(mix(Optional.of(END), product("A", 4)).covers("P1", "P1-B5")).isFalse();
    }

    @Test
    void refusesAnEndBeforeTheStart() {
        assertThatThrownBy(() -> mix(Optional.of(END.minusSeconds(7200)), product("A", 4)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Maybe the two are swapped");
    }

    private static Application mix(Optional<Instant> ended, ProductUse... products) {
        return new Application(
                "T3",
                "P1",
                Set.of("P1-B4"),
                END.minusSeconds(3600),
                ended,
                List.of(products),
                "",
                "AP-1",
                "");
    }

    private static ProductUse product(String name, double reentryHours) {
        return new ProductUse(
                name,
                Optional.empty(),
                List.of("6"),
                OptionalDouble.of(reentryHours),
                OptionalInt.empty(),
                OptionalInt.empty());
    }
}
