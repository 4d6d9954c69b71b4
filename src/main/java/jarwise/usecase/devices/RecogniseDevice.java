package jarwise.usecase.devices;

import jarwise.site.Device;
import jarwise.store.work.DeviceStore;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Tells whether a request comes from a device that was let in.
 *
 * @param devices those let in
 */
public record RecogniseDevice(DeviceStore devices) {

    /** Writing at each request would wear the disk. */
    private static final Duration SEEN_TO = Duration.ofMinutes(5);

    /**
     * {@return the device, and whether its cookie is to be given a new year}
     *
     * @param nursery whose pages it asks for
     * @param secret from its cookie
     * @param plain whether the secret came over plain http
     */
    public Optional<Seen> run(String nursery, String secret, boolean plain, Instant now) {
        Optional<Device> known =
                devices.find(nursery, Secrets.hash(secret))
                        .filter(Device::isLetIn)
                        .filter(device -> device.plain() == plain);
        return known.map(
                device -> {
                    boolean late = device.lastSeen().plus(SEEN_TO).isBefore(now);
                    if (late) {
                        devices.seen(nursery, device.id(), now);
                    }
                    return new Seen(device, late);
                });
    }

    /**
     * A device that was let in.
     *
     * @param device which
     * @param noted whether this visit was written down
     */
    public record Seen(Device device, boolean noted) {}
}
