package jarwise.store;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Instants as UTC text of fixed width with microseconds: sorts as time in either database. */
final class Moments {

    private static final DateTimeFormatter FORMAT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

    private Moments() {}

    static String write(Instant instant) {
        return FORMAT.format(instant);
    }

    static Instant read(String text) {
        return Instant.parse(text);
    }
}
