package jarwise.store;

/** The handful of strings in which the two databases differ. */
enum Dialect {
    SQLITE(
            "select 1",
            "select count(*) from sqlite_master where type = 'table' and name = 'schema_history'"),
    POSTGRESQL(
            "select pg_advisory_xact_lock(7007)",
            "select count(*) from information_schema.tables where table_schema ="
                    + " current_schema() and table_name = 'schema_history'");

    private final String appendLock;
    private final String hasHistory;

    Dialect(String appendLock, String hasHistory) {
        this.appendLock = appendLock;
        this.hasHistory = hasHistory;
    }

    /**
     * {@return the statement that makes appends follow one another, so that no reader sees event 2
     * before event 1; SQLite has one writer anyway}
     */
    String appendLock() {
        return appendLock;
    }

    /** {@return the question whether the tables have a history, 1 or 0} */
    String hasHistory() {
        return hasHistory;
    }
}
