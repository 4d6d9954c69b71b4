package jarwise.usecase.calendar;

import jarwise.store.work.CalendarStore;
import jarwise.usecase.devices.Secrets;
import java.time.Instant;
import java.util.Optional;

/**
 * Opens the calendar of a site to whoever has its address, and closes it.
 *
 * @param store keeps the secret in the address
 */
public record OpenCalendar(CalendarStore store) {

    /** Makes a fresh address; one that was given out before no longer works. */
    public void open(String nursery, Instant now) {
        store.open(nursery, Secrets.fresh(), now);
    }

    /** Makes the address void. */
    public void close(String nursery, Instant now) {
        store.close(nursery, now);
    }

    /** {@return the secret in the address; empty while there is none} */
    public Optional<String> secret(String nursery) {
        return store.token(nursery);
    }

    /** {@return whether {@code given} is the secret of a nursery's calendar} */
    public boolean opens(String nursery, String given) {
        return store.token(nursery).map(known -> Secrets.same(known, given)).orElse(false);
    }
}
