package jarwise.site;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which crop lot stood on which bench from when to when, and how much of it. Growing points per
 * plant are an estimate of the day {@code estimatedOn}.
 *
 * @param bench code of the bench
 * @param cropLot code of the crop lot
 * @param from first day
 * @param to last day; empty while it still stands there
 * @param plants plants standing, where counted
 * @param growingPointsPerPlant where estimated
 * @param estimatedOn day of that estimate
 */
public record Occupancy(
        String bench,
        String cropLot,
        LocalDate from,
        Optional<LocalDate> to,
        OptionalDouble plants,
        OptionalDouble growingPointsPerPlant,
        Optional<LocalDate> estimatedOn) {

    /** {@return whether the lot stood there on {@code day}} */
    public boolean covers(LocalDate day) {
        return !day.isBefore(from) && to.map(last -> !day.isAfter(last)).orElse(true);
    }
}
