package jarwise.usecase;

import jarwise.base.Message;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.copy.DataCheck;
import java.util.List;

/** Looks whether data are whole and unaltered. */
public record VerifyData() {

    /**
     * What was found.
     *
     * @param events how many events the log has
     * @param faults what is wrong; empty when nothing is
     */
    public record Report(long events, List<Message> faults) {

        public Report {
            faults = List.copyOf(faults);
        }

        /** {@return whether nothing is wrong} */
        public boolean isWhole() {
            return faults.isEmpty();
        }
    }

    /**
     * Looks.
     *
     * @param address of the data: a folder, a file, or a PostgreSQL database
     */
    public Report run(String address) {
        try (Database database = Database.openExisting(address)) {
            List<Message> faults = new DataCheck(database).faults();
            return new Report(faults.isEmpty() ? new EventStore(database).count() : 0, faults);
        }
    }
}
