package jarwise.store.work;

import jarwise.sample.Photo;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/** Pictures of kept specimens, each once, told apart by the hash of their bytes. */
public final class PhotoStore {

    private final Database database;

    public PhotoStore(Database database) {
        this.database = database;
    }

    /**
     * Keeps a picture; one that is there already stays as it is.
     *
     * @param nursery slug of the site
     * @param sha256 hash of its bytes, 64 hexadecimal digits
     * @param photo the picture
     * @param takenAt when, where that is known
     */
    public void put(String nursery, String sha256, Photo photo, Optional<Instant> takenAt) {
        database.write(
                handle -> {
                    if (find(nursery, sha256).isEmpty()) {
                        Row.of("photo")
                                .with("nursery", nursery)
                                .with("sha256", sha256)
                                .with("media_type", photo.mediaType())
                                .with("content", photo.base64())
                                .with("taken_at", takenAt)
                                .put(handle, "nursery", "sha256");
                    }
                    return sha256;
                });
    }

    /** {@return the picture with this hash} */
    public Optional<Photo> find(String nursery, String sha256) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from photo where nursery = :nursery"
                                                + " and sha256 = :sha256")
                                .bind("nursery", nursery)
                                .bind("sha256", sha256)
                                .map(
                                        (row, context) ->
                                                new Photo(
                                                        new Columns(row).text("media_type"),
                                                        new Columns(row).text("content")))
                                .findOne());
    }

    /** {@return the hashes of all pictures of a site that have arrived} */
    public Set<String> hashes(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery("select sha256 from photo where nursery = :nursery")
                                .bind("nursery", nursery)
                                .mapTo(String.class)
                                .set());
    }
}
