package jarwise.phenology.window;

import jarwise.phenology.TemperatureCourse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When to treat again, after one published set of constants.
 *
 * @param constants the set
 * @param earliest when the last egg laid before the treatment has hatched; empty if not in time
 * @param latest when the first of those that hatched right after it leaves the stage; empty if not
 *     in time
 * @param followUps treatments that together meet all of them; more than one where the first are
 *     gone before the last hatch; none if there is no end in time
 */
public record SetWindow(
        WindowConstants constants,
        Optional<LocalDateTime> earliest,
        Optional<LocalDateTime> latest,
        List<LocalDateTime> followUps) {

    /** No forecast reaches further. */
    public static final Duration FARTHEST = Duration.ofDays(120);

    private static final int MOST_FOLLOW_UPS = 20;

    /**
     * Works a window out.
     *
     * @param course temperature from the treatment on, without holes
     * @param constants a published set
     * @param treatedAt time of the treatment, which eggs outlive
     */
    static SetWindow of(
            TemperatureCourse course, WindowConstants constants, LocalDateTime treatedAt) {
        LocalDateTime last = treatedAt.plus(FARTHEST);
        Optional<LocalDateTime> earliest =
                course.end(constants.egg(), treatedAt).filter(end -> !end.isAfter(last));
        Optional<LocalDateTime> latest =
                course.end(constants.hit(), treatedAt).filter(end -> !end.isAfter(last));
        List<LocalDateTime> followUps =
                earliest.isPresent()
                        ? followUps(course, constants, treatedAt, earliest.get())
                        : List.of();
        return new SetWindow(constants, earliest, latest, followUps);
    }

    /** Each comes when the first that the one before did not meet are about to leave the stage. */
    private static List<LocalDateTime> followUps(
            TemperatureCourse course,
            WindowConstants constants,
            LocalDateTime treatedAt,
            LocalDateTime hatched) {
        List<LocalDateTime> times = new ArrayList<>();
        Optional<LocalDateTime> next = course.end(constants.hit(), treatedAt);
        while (next.isPresent() && next.get().isBefore(hatched)) {
            if (times.size() == MOST_FOLLOW_UPS) {
                return List.of();
            }
            times.add(next.get());
            next = course.end(constants.hit(), next.get());
        }
        times.add(hatched);
        return times;
    }

    /** {@return whether one more treatment can meet all that were eggs at the first} */
    public boolean oneIsEnough() {
        return followUps.size() == 1;
    }
}
