package jarwise.stats.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FoundShareTest {

    static List<Row> shares() {
        return ReferenceTable.read("found-share/beta.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shares")
    void isTheBetaDistribution(Row row) {
        long found = (long) row.number("found");
        long known = (long) row.number("known");

        FoundShare share = FoundShare.of(found, known, 0.95);

        assertThat(share.estimate()).isCloseTo(row.number("mean"), within(1e-9));
        assertThat(share.standardError()).isCloseTo(row.number("sd"), within(1e-9));
        assertThat(share.lower()).isCloseTo(row.number("lower95"), within(1e-9));
        assertThat(share.upper()).isCloseTo(row.number("upper95"), within(1e-9));
        assertThat(FoundShare.of(found, known, 0.8).lower())
                .isCloseTo(row.number("lower80"), within(1e-9));
    }

    @Test
    void missedIsOneMinusFound() {
        FoundShare found = FoundShare.of(7, 20, 0.9);
        FoundShare missed = FoundShare.of(13, 20, 0.9);

        assertThat(missed.estimate()).isCloseTo(1 - found.estimate(), within(1e-12));
        assertThat(missed.lower()).isCloseTo(1 - found.upper(), within(1e-12));
    }

    @Test
    void refusesMoreFoundThanKnown() {
        assertThatThrownBy(() -> FoundShare.of(9, 8, 0.95))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("0 to 8");
        assertThatThrownBy(() -> FoundShare.of(0, 0, 0.95)).isInstanceOf(InvalidInput.class);
    }
}
