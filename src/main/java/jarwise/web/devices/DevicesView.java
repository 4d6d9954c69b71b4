package jarwise.web.devices;

import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.site.Device;
import jarwise.usecase.devices.ShowDevices;
import jarwise.web.Frame;
import jarwise.web.lan.Reach;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * The page of devices in the reader's words.
 *
 * @param frame of the page
 * @param known devices and code
 * @param reach how other devices reach this machine; empty where they do not
 */
public record DevicesView(Frame frame, ShowDevices.Known known, Optional<Reach> reach) {

    private static final int MODULE = 5;

    /** {@return how many are let in, as a sentence} */
    public String answer() {
        int devices = known.letIn().size();
        return devices == 0
                ? frame.say("devices.answer.none")
                : new Figures(frame.words()).counted("devices.answer", devices);
    }

    /** {@return where a new phone starts} */
    public String start() {
        return reach.map(shown -> shown.plain(shown.names().get(0))).orElse("");
    }

    /** {@return where a phone goes that trusts this machine} */
    public String secure() {
        return reach.map(shown -> shown.secure(shown.names().get(0))).orElse("");
    }

    /** {@return the other addresses of the same pages} */
    public List<String> others() {
        return reach.map(shown -> shown.names().stream().skip(1).map(shown::secure).toList())
                .orElse(List.of());
    }

    /** {@return an address for a camera, SVG} */
    public String picture(String address) {
        return QrPicture.of(address, MODULE, frame.say("devices.qr", address));
    }

    /** {@return fingerprint of the authority, in lines of eight pairs; none without one} */
    public List<String> fingerprint() {
        return FingerprintLines.of(reach);
    }

    /** {@return when the code of the moment runs out} */
    public String codeUntil() {
        return known.code()
                .map(code -> code.until().atZone(frame.now().getZone()).toLocalTime())
                .map(time -> new Days(frame.words()).time(time))
                .orElse("");
    }

    /** {@return when the server's certificate runs out} */
    public String certificateUntil() {
        return reach.map(shown -> shown.until().atZone(ZoneId.of("UTC")).toLocalDate())
                .map(frame::day)
                .orElse("");
    }

    /** {@return what a device may open} */
    public String opens(Device device) {
        return frame.say(device.plain() ? "devices.opens.sheet" : "devices.opens.all");
    }

    /** {@return who uses a device} */
    public String person(Device device) {
        return device.person().isEmpty() ? frame.say("devices.nobody") : device.person();
    }
}
