package jarwise.wire.calendar;

import java.time.Instant;

/**
 * One entry of a calendar, in a version.
 *
 * @param uid its name, the same for ever and nowhere else used
 * @param times from when to when
 * @param text what it says
 * @param version which version of it this is
 */
public record CalendarEntry(String uid, Times times, Text text, Version version) {

    /**
     * From when to when.
     *
     * @param start first moment
     * @param end the moment after the last
     */
    public record Times(Instant start, Instant end) {}

    /**
     * What an entry says. It may go to whatever keeps a phone's calendar, so that it names places
     * and times only: no product, no pest, no count.
     *
     * @param summary one line
     * @param description some sentences
     * @param place bench or house
     * @param category READING or REI
     */
    public record Text(String summary, String description, String place, String category) {}

    /**
     * Which version of an entry it is.
     *
     * @param sequence 0 for the first
     * @param changedAt when this version was made
     * @param cancelled whether it no longer holds
     */
    public record Version(int sequence, Instant changedAt, boolean cancelled) {}
}
