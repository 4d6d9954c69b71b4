package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CubicTableTest {

    @ParameterizedTest(name = "at {0}")
    @ValueSource(doubles = {-3.7, -0.25, 0, 0.1, 0.5, 1, 12.34})
    void aCubicComesOutAsItIs(double x) {
        CubicTable table = new CubicTable(v -> 2 - v + 3 * v * v - 0.5 * v * v * v, 0.25);

        assertThat(table.value(x)).isCloseTo(2 - x + 3 * x * x - 0.5 * x * x * x, within(1e-11));
    }

    @ParameterizedTest(name = "step {0}")
    @ValueSource(doubles = {0.2, 0.1, 0.05})
    void theErrorIsWithinItsBound(double step) {
        CubicTable table = new CubicTable(Math::sin, step);
        double worst = 0;
        for (double x = 0; x < 7; x += 0.01) {
            worst = Math.max(worst, Math.abs(table.value(x) - Math.sin(x)));
        }

        double bound = 3.0 / 128 * Math.pow(step, 4);
        assertThat(worst).isBetween(0.9 * bound, bound);
    }

    @Test
    void asksForEachPointOnce() {
        AtomicInteger asked = new AtomicInteger();
        CubicTable table =
                new CubicTable(
                        x -> {
                            asked.incrementAndGet();
                            return x;
                        },
                        1);
        for (double x = 0; x < 1; x += 0.01) {
            table.value(x);
        }

        assertThat(asked).hasValue(4);
    }
}
