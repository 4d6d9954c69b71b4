package jarwise.usecase.devices;

import jarwise.sample.Reader;
import jarwise.site.Device;
import jarwise.store.ReaderStore;
import jarwise.store.work.DeviceStore;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Shows which devices are let in, and the code of the moment.
 *
 * @param codes shown at the desk
 * @param devices those let in
 * @param readers people of the site
 */
public record ShowDevices(LetInCodes codes, DeviceStore devices, ReaderStore readers) {

    /**
     * Devices of a site.
     *
     * @param letIn those that may come in, let in last first
     * @param shutOut those that may no longer
     * @param code shown now
     * @param people who may use one
     */
    public record Known(
            List<Device> letIn,
            List<Device> shutOut,
            Optional<LetInCode> code,
            List<Reader> people) {

        public Known {
            letIn = List.copyOf(letIn);
            shutOut = List.copyOf(shutOut);
            people = List.copyOf(people);
        }
    }

    /** {@return devices and code of a nursery} */
    public Known run(String nursery, Instant now) {
        List<Device> all = devices.devices(nursery);
        return new Known(
                all.stream().filter(Device::isLetIn).toList(),
                all.stream().filter(device -> !device.isLetIn()).toList(),
                codes.shownNow(nursery, now),
                readers.readers(nursery).stream().filter(Reader::active).toList());
    }

    /** Shows a fresh code for a person of the site, or for nobody in particular. */
    public void showCode(String nursery, String person, Instant now) {
        boolean known =
                readers.readers(nursery).stream().anyMatch(one -> one.code().equals(person));
        codes.show(nursery, known ? person : "", now);
    }
}
