package jarwise.web.desk;

import jarwise.Program;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;

/** A real server on a free port with a database of its own. */
public final class DeskServer implements AutoCloseable {

    public static final String NURSERY = "quillback";
    public final Database database;
    private final Program program;
    private final int port;
    private Instant now = Instant.parse("2026-05-07T05:40:00Z");

    /** Starts with the nursery of the demo, or with nothing at all. */
    public DeskServer(Path folder, boolean withNursery) {
        String address = folder.resolve("data").toString();
        this.program = Program.open(address, () -> now = now.plusSeconds(1));
        this.database = Database.open(address);
        if (withNursery) {
            new SiteStore(database)
                    .save(new Nursery(NURSERY, "Quillback Lane", ZoneId.of("Europe/Paris"), "en"));
        }
        this.port = program.serve(0);
    }

    public String address(String page) {
        return "http://127.0.0.1:" + port + "/" + page;
    }

    public String page(String page) {
        return address(NURSERY + "/" + page);
    }

    @Override
    public void close() {
        database.close();
        program.close();
    }
}
