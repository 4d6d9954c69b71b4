package jarwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.sample.SampleRole;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RoundPlanTest {

    private final RoundPlan plan = RoundPlans.small("2026-05-11-a", "A-");

    @Test
    void tellsCropJarsFromControls() {
        assertThat(plan.ofCrop()).hasSize(3).noneMatch(jar -> jar.role() == SampleRole.BLANK);
    }

    @Test
    void refusesTwoJarsOfOneCode() {
        PlannedJar first = plan.jars().get(0);

        assertThatThrownBy(() -> with(List.of(first, at(first, 2))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("one code");
    }

    @Test
    void refusesAWalkWithAGap() {
        assertThatThrownBy(() -> with(List.of(plan.jars().get(1))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("number 2 of the walk; it must be 1");
    }

    @Test
    void refusesAJarOfPlantsWithoutGrowingPointsOrBench() {
        PlannedJar jar = plan.jars().get(0);

        assertThatThrownBy(() -> changed(jar, "H2-B4", 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> changed(jar, "", 10)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void refusesAPlaceBesideTheBench() {
        assertThatThrownBy(() -> new Spot(1.01, 0.5)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Spot(0.5, Double.NaN)).isInstanceOf(InvalidInput.class);
    }

    private RoundPlan with(List<PlannedJar> jars) {
        return new RoundPlan(
                plan.id(),
                plan.day(),
                plan.method(),
                plan.question(),
                plan.seed(),
                plan.numbers(),
                jars,
                plan.plannedBy(),
                plan.plannedAt());
    }

    private static PlannedJar at(PlannedJar jar, int walk) {
        return new PlannedJar(
                jar.code(),
                walk,
                jar.house(),
                jar.bench(),
                jar.cropLot(),
                jar.variety(),
                jar.purpose(),
                jar.role(),
                jar.spot(),
                jar.growingPoints());
    }

    private static PlannedJar changed(PlannedJar jar, String bench, int growingPoints) {
        return new PlannedJar(
                jar.code(),
                1,
                jar.house(),
                bench,
                jar.cropLot(),
                jar.variety(),
                jar.purpose(),
                jar.role(),
                Optional.empty(),
                growingPoints);
    }
}
