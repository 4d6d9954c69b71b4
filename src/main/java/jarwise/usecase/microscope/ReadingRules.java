package jarwise.usecase.microscope;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.site.Setting;
import jarwise.store.SettingsStore;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a site reads filters.
 *
 * @param passes passes that make a whole filter, 1 or more
 * @param wantedRelativeError standard error over estimate that is good enough for one filter, above
 *     0; empty if there is no such wish
 * @param minutesAllowed minutes set for one filter, above 0; empty if there is no limit
 */
public record ReadingRules(
        int passes, OptionalDouble wantedRelativeError, OptionalDouble minutesAllowed) {

    /** Setting: passes that make a whole filter. */
    public static final String PASSES = "reading-passes";

    /** Setting: standard error over estimate that is good enough for one filter; 0 for no wish. */
    public static final String PRECISION = "filter-precision";

    /** Setting: minutes for one filter; 0 for no limit. */
    public static final String MINUTES = "filter-minutes";

    /** More passes than this leave too few cells in each. */
    public static final int MOST_PASSES = 20;

    private static final int USUAL_PASSES = 4;

    public ReadingRules {
        Require.atLeast("passes", passes, 1);
        wantedRelativeError.ifPresent(error -> Require.positive("wanted precision", error));
        minutesAllowed.ifPresent(minutes -> Require.positive("minutes for one filter", minutes));
    }

    /** {@return what holds at a nursery on a day} */
    public static ReadingRules on(SettingsStore settings, String nursery, LocalDate day) {
        List<Setting> all = settings.settings(nursery);
        return new ReadingRules(
                (int) number(all, PASSES, day).orElse(USUAL_PASSES),
                wish(number(all, PRECISION, day)),
                wish(number(all, MINUTES, day)));
    }

    private static OptionalDouble wish(OptionalDouble set) {
        return set.orElse(0) > 0 ? set : OptionalDouble.empty();
    }

    /** Later choices come first. */
    private static OptionalDouble number(List<Setting> all, String name, LocalDate day) {
        return all.stream()
                .filter(setting -> setting.name().equals(name))
                .filter(setting -> !setting.holdsFrom().isAfter(day))
                .limit(1)
                .mapToDouble(ReadingRules::number)
                .findFirst();
    }

    private static double number(Setting setting) {
        try {
            return Double.parseDouble(setting.value());
        } catch (NumberFormatException e) {
            throw new InvalidInput(
                    "%s is '%s'; it must be a number.".formatted(setting.name(), setting.value()));
        }
    }
}
