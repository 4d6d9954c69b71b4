package jarwise.usecase.demo;

import jarwise.plan.BenchSpots;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.plan.Spot;
import jarwise.sample.LabelCode;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** The round that the demo nursery has planned and not walked yet. */
public final class DemoRounds {

    private static final int JARS = 20;
    private static final long SEED = 4127;
    private static final String BENCH = "H2-B4";
    private static final LocalDate DAY = new WorkWeek(WorkWeek.ROUNDS + 1).monday();
    private static final Instant PLANNED_AT =
            LocalDateTime.of(2026, 5, 6, 16, 20).atZone(DemoClock.ZONE).toInstant();

    private DemoRounds() {}

    /** {@return round 11: 20 more jars on the bench that got the pots} */
    public static RoundPlan eleventh() {
        Random codes = new Random(SEED);
        List<PlannedJar> jars = new ArrayList<>();
        for (Spot spot : BenchSpots.draw(BENCH, JARS, SEED)) {
            jars.add(
                    new PlannedJar(
                            LabelCode.next(codes::nextInt).sampleCode(),
                            jars.size() + 1,
                            "H2",
                            BENCH,
                            Optional.of("L-121"),
                            Optional.of("Pellam Pink"),
                            Purpose.RANDOM,
                            SampleRole.CROP,
                            Optional.of(spot),
                            Stand.GROWING_POINTS));
        }
        return new RoundPlan(
                DAY + "-a",
                DAY,
                SamplingMethod.WASH,
                RoundQuestion.DETECT,
                SEED,
                Map.of(
                        "subject",
                        "FRANOC/larva",
                        "density",
                        "0.1",
                        "confidence",
                        "95",
                        "jars",
                        String.valueOf(JARS),
                        "points",
                        String.valueOf(Stand.GROWING_POINTS),
                        "stand",
                        BENCH + "/L-121"),
                jars,
                Cast.READER_A,
                PLANNED_AT);
    }
}
