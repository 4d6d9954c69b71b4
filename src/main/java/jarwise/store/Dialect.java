package jarwise.store;

/** The handful of strings in which the two databases differ. */
enum Dialect {
    SQLITE("select 1", "journal_mode"),
    POSTGRESQL("select pg_advisory_xact_lock(7007)", "server_version");

    private final String appendLock;
    private final String about;

    Dialect(String appendLock, String about) {
        this.appendLock = appendLock;
        this.about = about;
    }

    /**
     * {@return the statement that makes appends follow one another, so that no reader sees event 2
     * before event 1; SQLite has one writer anyway}
     */
    String appendLock() {
        return appendLock;
    }

    /** {@return a setting that tells the database apart in messages} */
    String about() {
        return about;
    }
}
