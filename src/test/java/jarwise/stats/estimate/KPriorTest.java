package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KPriorTest {

    private static List<List<Observation>> history(long seed, int groups, double k, double spread) {
        SeededRandom random = new SeededRandom(seed);
        List<List<Observation>> result = new ArrayList<>();
        for (int g = 0; g < groups; g++) {
            double mean = 2 + 6 * random.uniform();
            double own = k * Math.exp(spread * (2 * random.uniform() - 1) * Math.sqrt(3));
            result.add(Samples.drawn(random, 12, 10, new NegativeBinomial(mean, own)));
        }
        return result;
    }

    @Test
    void fewerThanThirtySamplesAreNoHistory() {
        assertThat(KPrior.fromHistory(history(1, 2, 0.5, 0))).isEmpty();
        assertThat(KPrior.fromHistory(history(1, 3, 0.5, 0))).isPresent();
        assertThat(KPrior.fromHistory(List.of())).isEmpty();
    }

    @Test
    void samplesThatSayNothingAboutKDoNotCount() {
        List<List<Observation>> groups = history(1, 2, 0.5, 0);
        groups.add(Samples.list("0/10x50"));
        for (int i = 0; i < 50; i++) {
            groups.add(Samples.list("4/10"));
        }

        assertThat(KPrior.fromHistory(groups)).isEmpty();
    }

    @Test
    void aLongHistoryFindsTheKThatMadeIt() {
        KPrior prior = KPrior.fromHistory(history(7, 60, 0.8, 0)).orElseThrow();

        assertThat(Math.log(prior.medianK() / 0.8)).isCloseTo(0, within(0.15));
        assertThat(prior.logSpread()).isLessThan(0.4);
    }

    @Test
    void kThatChangesFromGroupToGroupMakesAWiderPrior() {
        KPrior steady = KPrior.fromHistory(history(7, 60, 0.8, 0)).orElseThrow();
        KPrior changing = KPrior.fromHistory(history(7, 60, 0.8, 0.9)).orElseThrow();

        assertThat(changing.logSpread()).isCloseTo(0.9, within(0.25));
        assertThat(changing.logSpread()).isGreaterThan(steady.logSpread() + 0.2);
    }

    @Test
    void aShortHistoryNarrowsTheStandardPriorOnlySoFar() {
        KPrior prior = KPrior.fromHistory(history(3, 3, 0.8, 0)).orElseThrow();

        assertThat(prior.logSpread()).isBetween(0.4, 1.2);
    }

    @Test
    void refusesASpreadThatIsNone() {
        assertThatThrownBy(() -> new KPrior(0.5, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new KPrior(Double.NaN, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new KPrior(0.5, 50)).isInstanceOf(InvalidInput.class);
    }
}
