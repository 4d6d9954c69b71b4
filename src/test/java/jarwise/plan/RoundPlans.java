package jarwise.plan;

import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small round for tests: two random jars, a targeted one, a blank wash. */
public final class RoundPlans {

    public static final LocalDate DAY = LocalDate.of(2026, 5, 11);
    public static final Instant PLANNED_AT = Instant.parse("2026-05-07T11:40:00.000001Z");

    private RoundPlans() {}

    /** {@return a round whose codes begin with {@code prefix}} */
    public static RoundPlan small(String id, String prefix) {
        return new RoundPlan(
                id,
                DAY,
                SamplingMethod.WASH,
                RoundQuestion.DETECT,
                Long.MIN_VALUE,
                Map.of("density", "0.1", "odd", "é,\"\n;"),
                List.of(
                        jar(prefix, 1, "H2-B4", Optional.of(new Spot(0.1 + 0.2, 1))),
                        jar(prefix, 2, "P1-B3", Optional.of(new Spot(0, 0.75))),
                        new PlannedJar(
                                new SampleCode(prefix + 3),
                                3,
                                "P1",
                                "P1-B3",
                                Optional.empty(),
                                Optional.empty(),
                                Purpose.TARGETED,
                                SampleRole.CROP,
                                Optional.empty(),
                                10),
                        new PlannedJar(
                                new SampleCode(prefix + 4),
                                4,
                                "",
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                Purpose.TARGETED,
                                SampleRole.BLANK,
                                Optional.empty(),
                                0)),
                "SC-1",
                PLANNED_AT);
    }

    private static PlannedJar jar(String prefix, int walk, String bench, Optional<Spot> spot) {
        return new PlannedJar(
                new SampleCode(prefix + walk),
                walk,
                bench.substring(0, 2),
                bench,
                Optional.of("L-117"),
                Optional.of("Rubia Tarn"),
                Purpose.RANDOM,
                SampleRole.CROP,
                spot,
                10);
    }
}
