package jarwise.usecase;

import jarwise.store.Database;
import jarwise.store.PestStore;
import jarwise.wire.pest.ShippedPests;

/** Opens the data at an address; new data get the shipped list of pests. */
public final class OpenData {

    private OpenData() {}

    /**
     * Opens.
     *
     * @param address folder, file or PostgreSQL database
     * @throws jarwise.base.InvalidInput if it cannot be opened, with what to try
     */
    public static Database at(String address) {
        Database database = Database.open(address);
        PestStore pests = new PestStore(database);
        if (pests.pests().all().isEmpty()) {
            ShippedPests.read().forEach(pests::save);
        }
        return database;
    }
}
