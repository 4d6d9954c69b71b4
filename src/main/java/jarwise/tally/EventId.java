package jarwise.tally;

import jarwise.base.Require;

/**
 * An event's own identity. The same identity sent twice is the same event.
 *
 * @param device what recorded it: a phone, a desk, an import
 * @param sequence its number on that device, from 1
 */
public record EventId(String device, long sequence) implements Comparable<EventId> {

    public EventId {
        Require.notBlank("device", device);
        Require.atLeast("sequence", sequence, 1);
    }

    @Override
    public int compareTo(EventId other) {
        int byDevice = device.compareTo(other.device);
        return byDevice != 0 ? byDevice : Long.compare(sequence, other.sequence);
    }
}
