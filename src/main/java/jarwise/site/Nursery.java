package jarwise.site;

import jarwise.base.Require;
import java.time.ZoneId;

/**
 * A whole business site: one client, kept apart from every other.
 *
 * @param slug its name in addresses: lower-case letters, digits, hyphens
 * @param name as people write it
 * @param zone time zone in which its clocks run
 * @param language language of its pages and letters: en, es or fr
 */
public record Nursery(String slug, String name, ZoneId zone, String language) {

    public Nursery {
        Require.notBlank("nursery", name);
        if (!slug.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new jarwise.base.InvalidInput(
                    "The short name is '%s'; it must be lower-case letters, digits and hyphens."
                            .formatted(slug));
        }
    }
}
