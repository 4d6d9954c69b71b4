package jarwise.usecase.exchange;

import jarwise.sample.Photo;
import jarwise.store.work.PhotoStore;
import java.util.Optional;

/** Looks up the picture of a kept specimen. */
public record ShowPhoto(PhotoStore photos) {

    /** {@return the picture of this nursery with this hash; empty where it has not arrived} */
    public Optional<Photo> run(String nursery, String sha256) {
        return photos.find(nursery, sha256);
    }
}
