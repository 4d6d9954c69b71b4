package jarwise.store;

import java.util.concurrent.atomic.AtomicInteger;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.StatementContext;

/** Counts what is asked of a database. */
public final class Questions {

    private Questions() {}

    /** {@return how many statements a piece of work sends} */
    public static int askedBy(Database database, Runnable work) {
        AtomicInteger asked = new AtomicInteger();
        database.jdbi()
                .setSqlLogger(
                        new SqlLogger() {
                            @Override
                            public void logAfterExecution(StatementContext context) {
                                asked.incrementAndGet();
                            }
                        });
        work.run();
        database.jdbi().setSqlLogger(SqlLogger.NOP_SQL_LOGGER);
        return asked.get();
    }
}
