package jarwise.bench;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.bench.EfficacyCoverage.Row;
import jarwise.stats.efficacy.EfficacyEstimator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The coverage of efficacy in small: 800 trials, Monte Carlo error of a coverage about 0.8 %. */
class EfficacyCoverageTest {

    @Tag("slow")
    @ParameterizedTest(name = "design {0}, seed 20260413")
    @ValueSource(ints = {0, 1, 4, 6})
    void theDefaultLimitsCoverAsOftenAsTheySay(int design) {
        Row row =
                EfficacyCoverage.run(
                        EfficacyEstimator.standard(),
                        EfficacyCoverage.designs().get(design),
                        800,
                        20260413);

        // 94 to 96.5 % is the aim; 2.5 errors beyond on either side
        assertThat(row.coverage()).isBetween(0.92, 0.985);
        assertThat(row.under() + row.over()).isPositive();
    }
}
