package jarwise.usecase.devices;

import jarwise.base.Message;
import jarwise.site.Device;
import jarwise.store.work.DeviceStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.util.Optional;

/**
 * Lets a device in that shows the code of the desk's screen.
 *
 * @param codes shown at the desk
 * @param devices those let in
 */
public record LetDeviceIn(LetInCodes codes, DeviceStore devices) {

    private static final int LONGEST_NAME = 60;

    /**
     * What the device gets.
     *
     * @param nursery whose pages are open to it
     * @param secret kept by the device alone
     */
    public record Admitted(String nursery, String secret) {}

    /**
     * Where a device stands.
     *
     * @param from its address in the network
     * @param plain whether it came over plain http
     */
    public record Stranger(String from, boolean plain) {}

    /**
     * {@return what the device gets}
     *
     * @param fields code and name
     * @throws jarwise.usecase.form.FormRefused if the form is not complete
     * @throws jarwise.base.Refused if the code is not taken
     */
    public Admitted run(Stranger stranger, Fields fields, Instant now) {
        String typed = fields.needed("code");
        String name = fields.needed("name").strip();
        if (name.length() > LONGEST_NAME) {
            fields.fault("name", Message.of("devices.name.long", String.valueOf(LONGEST_NAME)));
        }
        fields.refuseIfAny();
        LetInCode code = codes.take(typed, stranger.from(), now);
        String secret = Secrets.fresh();
        devices.add(
                code.nursery(),
                new Device(
                        Secrets.freshId(),
                        name,
                        code.person(),
                        stranger.plain(),
                        now,
                        now,
                        Optional.empty()),
                Secrets.hash(secret));
        return new Admitted(code.nursery(), secret);
    }
}
