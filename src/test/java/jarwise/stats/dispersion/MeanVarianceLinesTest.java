package jarwise.stats.dispersion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Groups in which nothing was found have no place on either line. */
class MeanVarianceLinesTest {

    private static final MeanAndVariance NOTHING = new MeanAndVariance("nothing", 20, 0, 0);

    private static List<MeanAndVariance> groups(int number) {
        List<MeanAndVariance> groups = new ArrayList<>();
        for (int i = 1; i <= number; i++) {
            groups.add(new MeanAndVariance("g" + i, 20, i, i + 0.5 * i * i));
        }
        return groups;
    }

    private static List<MeanAndVariance> and(List<MeanAndVariance> groups, MeanAndVariance one) {
        List<MeanAndVariance> all = new ArrayList<>(groups);
        all.add(one);
        return all;
    }

    /** Crowding m + s²/m − 1 of these groups is exactly 1.5 m. */
    @Test
    void aGroupWithNothingInItChangesNoLine() {
        MeanVarianceLines without = MeanVarianceLines.of(groups(6));
        MeanVarianceLines with = MeanVarianceLines.of(and(groups(6), NOTHING));

        assertThat(with.iwao()).isPresent().isEqualTo(without.iwao());
        assertThat(with.taylor()).isPresent().isEqualTo(without.taylor());
        assertThat(without.warnings()).isEmpty();
        assertThat(with.warnings()).singleElement().asString().contains("0: nothing.");
    }

    @Test
    void aGroupWithNothingInItDoesNotCountAmongTheFiveThatAreNeeded() {
        MeanVarianceLines lines = MeanVarianceLines.of(and(groups(4), NOTHING));

        assertThat(lines.iwao()).isEmpty();
        assertThat(lines.taylor()).isEmpty();
        assertThat(lines.warnings())
                .anyMatch(said -> said.startsWith("Iwao's") && said.contains("4 groups can be"))
                .anyMatch(said -> said.startsWith("Taylor's") && said.contains("4 groups can be"));
    }
}
