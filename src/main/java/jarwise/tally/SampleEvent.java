package jarwise.tally;

import jarwise.base.Require;
import jarwise.sample.SampleCode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Something that happened to one sample. Events are added, never changed.
 *
 * @param id its own identity
 * @param sample the sample it happened to
 * @param at when, by the clock of the device, to the microsecond; for the record, never for order
 * @param person role code of who did it
 * @param batch the import it came with, where it came with one
 * @param deed what happened
 */
public record SampleEvent(
        EventId id,
        SampleCode sample,
        Instant at,
        String person,
        Optional<String> batch,
        Deed deed) {

    public SampleEvent {
        at = at.truncatedTo(ChronoUnit.MICROS);
        Require.notBlank("person", person);
    }
}
