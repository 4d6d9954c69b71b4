package jarwise.phenology.window;

import jarwise.phenology.TemperatureCourse;
import jarwise.phenology.TemperatureSpan;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When to treat again, over all published sets.
 *
 * @param sets the window of each
 */
public record TreatmentWindow(List<SetWindow> sets) {

    public TreatmentWindow {
        sets = List.copyOf(sets);
    }

    /**
     * Works the windows out.
     *
     * @param course temperature from the treatment on, without holes
     * @param constants published sets
     * @param treatedAt time of the treatment, which eggs outlive
     * @return one window a set, in their order
     */
    public static TreatmentWindow of(
            TemperatureCourse course, List<WindowConstants> constants, LocalDateTime treatedAt) {
        return new TreatmentWindow(
                constants.stream().map(set -> SetWindow.of(course, set, treatedAt)).toList());
    }

    /** {@return the smallest beginning of all sets that have one} */
    public Optional<LocalDateTime> earliest() {
        return sets.stream().flatMap(set -> set.earliest().stream()).min(Comparator.naturalOrder());
    }

    /** {@return the largest end of all sets that have one} */
    public Optional<LocalDateTime> latest() {
        return sets.stream().flatMap(set -> set.latest().stream()).max(Comparator.naturalOrder());
    }

    /** {@return the last moment that any set asks about; empty if one of them is not in time} */
    public Optional<LocalDateTime> end() {
        boolean all =
                sets.stream()
                        .allMatch(set -> set.earliest().isPresent() && set.latest().isPresent());
        return all
                ? sets.stream()
                        .flatMap(s -> List.of(s.earliest().get(), s.latest().get()).stream())
                        .max(Comparator.naturalOrder())
                : Optional.empty();
    }

    /**
     * {@return days by which a moment moves if it is a degree warmer all the time}
     *
     * @param warmer the moment at one degree more
     * @param cooler the moment at one degree less
     */
    public static OptionalDouble perDegree(
            Optional<LocalDateTime> warmer, Optional<LocalDateTime> cooler) {
        return warmer.isPresent() && cooler.isPresent()
                ? OptionalDouble.of(TemperatureSpan.days(cooler.get(), warmer.get()) / 2)
                : OptionalDouble.empty();
    }
}
