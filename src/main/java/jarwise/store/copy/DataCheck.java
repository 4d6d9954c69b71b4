package jarwise.store.copy;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SiteStore;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Looks whether data are whole: the file, the references, the event chain, the counts. */
public final class DataCheck {

    /** Samples named in a message; more would hide the rest. */
    private static final int NAMED = 5;

    private final Database database;

    public DataCheck(Database database) {
        this.database = database;
    }

    /** {@return what is wrong; empty when nothing is} */
    public List<Message> faults() {
        List<Message> faults = new ArrayList<>();
        try {
            if (database.file().isPresent()) {
                fileFaults(faults);
            }
            if (faults.isEmpty()) {
                contentFaults(faults);
            }
        } catch (Refused e) {
            faults.add(e.reason());
        }
        return faults;
    }

    private void fileFaults(List<Message> faults) {
        List<String> found = texts("pragma integrity_check(5)");
        if (!found.equals(List.of("ok"))) {
            faults.add(Message.of("verify.integrity", String.join("; ", found)));
            return;
        }
        texts("pragma foreign_key_check").stream()
                .distinct()
                .forEach(table -> faults.add(Message.of("verify.foreign-keys", table)));
    }

    private List<String> texts(String sql) {
        return database.read(handle -> handle.createQuery(sql).mapTo(String.class).list());
    }

    private void contentFaults(List<Message> faults) {
        EventStore events = new EventStore(database);
        OptionalLong broken = events.firstBrokenLink();
        if (broken.isPresent()) {
            faults.add(Message.of("verify.chain", String.valueOf(broken.getAsLong())));
        }
        for (Nursery nursery : new SiteStore(database).nurseries()) {
            List<String> stale = events.staleSamples(nursery.slug());
            if (!stale.isEmpty()) {
                String some = String.join(", ", stale.subList(0, Math.min(NAMED, stale.size())));
                faults.add(
                        Message.of(
                                "verify.read-model",
                                stale.size() > NAMED ? some + " … " + stale.size() : some));
            }
        }
    }
}
