package jarwise.phenology;

import java.time.Duration;
import java.time.LocalDateTime;

/**
 * Time for which a log has no reading.
 *
 * @param from last reading before it, or the beginning of the first day missing
 * @param to first reading after it, or the end of the last day missing
 * @param filled whether it was short enough to be filled by a line
 */
public record LogGap(LocalDateTime from, LocalDateTime to, boolean filled) {

    /** Readings further apart than this are told as a gap. */
    static final Duration TOLD = Duration.ofHours(2);

    /** Nobody can say what the temperature was in a gap longer than this. */
    static final Duration LONGEST_FILLED = Duration.ofHours(6);
}
