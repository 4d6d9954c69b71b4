package jarwise.site;

import jarwise.base.Require;
import java.time.Instant;
import java.util.Optional;

/**
 * A phone or tablet that was let in.
 *
 * @param id its name in the tables, unique in the nursery
 * @param name what its owner calls it
 * @param person role code of who uses it; empty where nobody in particular does
 * @param plain whether its secret goes over plain http, where only the round sheet is open
 * @param letInAt when it was let in
 * @param lastSeen when it last asked for a page, to some minutes
 * @param revokedAt when it was shut out again
 */
public record Device(
        String id,
        String name,
        String person,
        boolean plain,
        Instant letInAt,
        Instant lastSeen,
        Optional<Instant> revokedAt) {

    public Device {
        Require.notBlank("device", id);
        Require.notBlank("name of the device", name);
    }

    /** {@return whether it may come in} */
    public boolean isLetIn() {
        return revokedAt.isEmpty();
    }
}
