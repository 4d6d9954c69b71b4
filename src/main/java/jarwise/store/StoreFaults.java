package jarwise.store;

import jarwise.base.Message;
import jarwise.base.Refused;
import java.sql.SQLException;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteErrorCode;

/** Faults of a database that a scout can do something about, as a message. */
final class StoreFaults {

    private StoreFaults() {}

    /** {@return what to throw: a message where the fault is known, else the fault itself} */
    static RuntimeException told(JdbiException fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                String key = key(sql);
                if (!key.isEmpty()) {
                    Refused refused = new Refused(Message.of(key));
                    refused.initCause(fault);
                    return refused;
                }
            }
        }
        return fault;
    }

    private static String key(SQLException fault) {
        if (fault instanceof org.sqlite.SQLiteException sqlite) {
            SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(sqlite.getResultCode().code & 0xff);
            return switch (code) {
                case SQLITE_BUSY, SQLITE_LOCKED -> "store.busy";
                case SQLITE_FULL -> "store.full";
                case SQLITE_IOERR -> "store.unreadable";
                case SQLITE_READONLY, SQLITE_CANTOPEN, SQLITE_PERM -> "store.not-writable";
                case SQLITE_CORRUPT, SQLITE_NOTADB -> "store.damaged";
                default -> "";
            };
        }
        String state = fault.getSQLState();
        if (state == null) {
            return "";
        }
        // 08: connection; 57P: shut down or terminated by an administrator; 53: out of resources.
        if (state.startsWith("08") || state.startsWith("57P")) {
            return "store.gone";
        }
        return state.startsWith("53") ? "store.full" : "";
    }
}
