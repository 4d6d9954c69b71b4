package jarwise.sample;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which samples to list.
 *
 * @param part part of a code, any case; empty for all
 * @param state only those that stand so
 * @param day only those cut on this day
 */
public record SampleFilter(String part, Optional<SampleState> state, Optional<LocalDate> day) {

    /** Every sample. */
    public static final SampleFilter ALL = new SampleFilter("", Optional.empty(), Optional.empty());
}
