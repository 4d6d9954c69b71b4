package jarwise.plan;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.sample.SamplingMethod;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/**
 * A round with its labelled jars.
 *
 * @param id unique in the nursery: its day and a letter, such as 2026-05-11-a
 * @param day on which it is walked
 * @param method how insects are brought to the eye
 * @param question what it is to be able to say
 * @param seed of the random places; the same seed, the same places
 * @param numbers what was asked and assumed, by name, as text
 * @param jars in the order of the walk, at least one
 * @param plannedBy role code
 * @param plannedAt when it was registered
 */
public record RoundPlan(
        String id,
        LocalDate day,
        SamplingMethod method,
        RoundQuestion question,
        long seed,
        Map<String, String> numbers,
        List<PlannedJar> jars,
        String plannedBy,
        Instant plannedAt) {

    public RoundPlan {
        Require.notBlank("round", id);
        Require.notBlank("person", plannedBy);
        Require.atLeast("jars of the round", jars.size(), 1);
        numbers = Map.copyOf(numbers);
        jars = List.copyOf(jars);
        plannedAt = plannedAt.truncatedTo(ChronoUnit.MICROS);
        if (jars.stream().map(PlannedJar::code).distinct().count() < jars.size()) {
            throw new InvalidInput("The round has two jars of one code; each needs its own.");
        }
        for (int i = 0; i < jars.size(); i++) {
            if (jars.get(i).walk() != i + 1) {
                throw new InvalidInput(
                        "Jar %s is number %d of the walk; it must be %d."
                                .formatted(jars.get(i).code(), jars.get(i).walk(), i + 1));
            }
        }
    }

    /** {@return the jars that are cut from plants, in the order of the walk} */
    public List<PlannedJar> ofCrop() {
        return jars.stream().filter(PlannedJar::isOfCrop).toList();
    }
}
