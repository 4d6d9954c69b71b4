package jarwise.usecase.devices;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.store.work.DeviceStore;
import java.time.Instant;

/**
 * Shuts a device out, from its next request on.
 *
 * @param devices those let in
 */
public record RevokeDevice(DeviceStore devices) {

    /**
     * Shuts it out.
     *
     * @throws Refused if it is not let in
     */
    public void run(String nursery, String id, Instant now) {
        if (!devices.revoke(nursery, id, now)) {
            throw new Refused(Message.of("devices.unknown"));
        }
    }
}
