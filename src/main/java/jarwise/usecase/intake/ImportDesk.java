package jarwise.usecase.intake;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.pest.Pest;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.ImportBatch;
import jarwise.usecase.OpenData;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Everything a person does with sheets on one set of data. */
public final class ImportDesk implements AutoCloseable {

    private final Database database;
    private final InstantSource clock;
    private final SiteStore sites;
    private final ImportStore imports;

    /** Works on data that are open already. */
    public ImportDesk(Database database, InstantSource clock) {
        this.database = database;
        this.clock = clock;
        this.sites = new SiteStore(database);
        this.imports = new ImportStore(database);
    }

    /** {@return a desk on the data at an address; close it when done} */
    public static ImportDesk open(String address, InstantSource clock) {
        return new ImportDesk(OpenData.at(address), clock);
    }

    /** {@return what says what an import would do} */
    public PreviewImport preview() {
        return new PreviewImport(new EventStore(database), imports, new PestStore(database), sites);
    }

    /** {@return what takes a sheet in} */
    public ImportSheet importSheet() {
        return new ImportSheet(database, clock);
    }

    /** {@return what takes an import back} */
    public TakeBackImport takeBack() {
        return new TakeBackImport(database, clock);
    }

    /** {@return the imports of a nursery, the newest first} */
    public List<ImportBatch> batches(String nursery) {
        return imports.batches(nursery);
    }

    /** {@return the pests that can be counted} */
    public List<Pest> pests() {
        return new PestStore(database).pests().all();
    }

    /**
     * {@return samples whose counts differ from the fold of their events; none when all is well}
     */
    public List<String> staleSamples(String nursery) {
        return new EventStore(database).staleSamples(nursery);
    }

    /**
     * Finds the nursery that a command is about.
     *
     * @param slug its short name; the only nursery if empty
     * @param zone time zone of a nursery that is made here
     * @param mayBeMade whether a nursery of this name is made when there is none at all
     * @throws Refused if it cannot be told
     */
    public Nursery nursery(Optional<String> slug, ZoneId zone, boolean mayBeMade) {
        List<Nursery> all = sites.nurseries();
        String names = String.join(", ", all.stream().map(Nursery::slug).toList());
        if (slug.isEmpty()) {
            if (all.size() == 1) {
                return all.get(0);
            }
            throw new Refused(
                    all.isEmpty()
                            ? Message.of("import.no-nursery")
                            : Message.of("import.which-nursery", names));
        }
        Optional<Nursery> known =
                all.stream().filter(nursery -> nursery.slug().equals(slug.get())).findAny();
        if (known.isPresent()) {
            return known.get();
        }
        if (!all.isEmpty()) {
            throw new Refused(Message.of("import.nursery-unknown", slug.get(), names));
        }
        Nursery made = new Nursery(slug.get(), slug.get(), zone, "en");
        if (mayBeMade) {
            sites.save(made);
        }
        return made;
    }

    @Override
    public void close() {
        database.close();
    }
}
