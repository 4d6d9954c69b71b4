package jarwise.usecase.exchange;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.Photo;
import jarwise.store.work.PhotoStore;
import java.util.Optional;

/** Takes the picture of a kept specimen from a device. Sent again it is the same picture. */
public record TakePhoto(PhotoStore photos) {

    /**
     * Takes a picture. The event that names it may come later: nothing is asked about it.
     *
     * @param nursery slug of the site
     * @param sha256 hash that the device worked out, 64 small hexadecimal digits
     * @param file the picture, byte by byte
     * @throws Refused if it begins neither as a JPEG nor as a PNG, or has another hash; then
     *     nothing is kept
     */
    public void run(String nursery, String sha256, byte[] file) {
        Photo photo =
                Photo.in(file).orElseThrow(() -> new Refused(Message.of("exchange.photo.kind")));
        if (!photo.sha256().equals(sha256)) {
            throw new Refused(Message.of("exchange.photo.hash", sha256, photo.sha256()));
        }
        photos.put(nursery, sha256, photo, Optional.empty());
    }
}
