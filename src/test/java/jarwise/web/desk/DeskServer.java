package jarwise.web.desk;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.usecase.intake.ImportDesk;
import jarwise.usecase.intake.UploadShelf;
import jarwise.web.Server;
import jarwise.web.intake.ImportPages;
import jarwise.web.methods.MethodsPages;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** A real server on a free port with a database of its own. */
public final class DeskServer implements AutoCloseable {

    public static final String NURSERY = "quillback";
    public static final Pest THRIPS =
            new Pest(
                    "FRANOC",
                    Optional.of("FRANOC"),
                    "Frankliniella occidentalis",
                    "western flower thrips",
                    false,
                    List.of(
                            new LifeStage("larva1", "larva", StageMark.LARVA1, 0),
                            new LifeStage("larva2", "larva", StageMark.LARVA, 1),
                            new LifeStage("adult", "adult", StageMark.ADULT, 2)));

    public final Database database;
    private final Server server;
    private final int port;
    private Instant now = Instant.parse("2026-05-07T05:40:00Z");

    /** Starts with the nursery of the demo, or with nothing at all. */
    public DeskServer(Path folder, boolean withNursery) {
        this.database = Database.open(folder.resolve("data").toString());
        if (withNursery) {
            new SiteStore(database)
                    .save(new Nursery(NURSERY, "Quillback Lane", ZoneId.of("Europe/Paris"), "en"));
            new PestStore(database).save(THRIPS);
        }
        InstantSource clock = () -> now = now.plusSeconds(1);
        this.server =
                new Server(
                        () -> new SiteStore(database).nurseries(),
                        clock,
                        kit ->
                                List.of(
                                        new ImportPages(
                                                kit,
                                                new ImportDesk(database, clock),
                                                new UploadShelf(folder.resolve("sheets"), clock)),
                                        new MethodsPages(kit)));
        this.port = server.start(0);
    }

    public String address(String page) {
        return "http://127.0.0.1:" + port + "/" + page;
    }

    public String page(String page) {
        return address(NURSERY + "/" + page);
    }

    @Override
    public void close() {
        server.close();
        database.close();
    }
}
