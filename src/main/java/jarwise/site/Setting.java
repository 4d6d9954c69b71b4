package jarwise.site;

import java.time.LocalDate;

/**
 * A dated choice of the site, kept when a later one takes over.
 *
 * @param name which
 * @param value as text
 * @param holdsFrom first day
 * @param setBy role code
 * @param reason why
 */
public record Setting(
        String name, String value, LocalDate holdsFrom, String setBy, String reason) {}
