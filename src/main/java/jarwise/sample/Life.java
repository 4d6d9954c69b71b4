package jarwise.sample;

import java.time.Instant;
import java.util.Optional;

/**
 * When a filter may be read and by when it should be, and whether it was. Both limits are soft: an
 * early or late filter is read with a flag, never refused and never silently accepted.
 *
 * @param earliestRead end of the time in the freezer
 * @param readBy end of the time in which it should be read
 * @param readEarly whether it was read before it should have been
 * @param readLate whether it was read after it should have been
 */
public record Life(
        Optional<Instant> earliestRead,
        Optional<Instant> readBy,
        boolean readEarly,
        boolean readLate) {

    /** {@return the limits of a sample kept by this protocol} */
    public static Life of(CollectedSample.Times times, ProtocolVersion protocol) {
        Optional<Instant> earliest = times.freezerIn().map(in -> in.plus(protocol.freeze()));
        Optional<Instant> readBy = times.washed().map(at -> at.plus(protocol.readWithin()));
        Optional<Instant> read = times.read();
        return new Life(
                earliest,
                readBy,
                read.isPresent() && earliest.map(read.get()::isBefore).orElse(false),
                read.isPresent() && readBy.map(read.get()::isAfter).orElse(false));
    }

    /** {@return whether the filter may be read at a moment} */
    public boolean mayBeReadAt(Instant now) {
        return earliestRead.map(from -> !now.isBefore(from)).orElse(true);
    }

    /** {@return whether the time for reading has run out at a moment} */
    public boolean isOverdueAt(Instant now) {
        return readBy.map(now::isAfter).orElse(false);
    }
}
