package jarwise.store;

/** A process that opens data, and goes on to a migration that takes minutes if asked to. */
public final class MigrateUntilKilled {

    private MigrateUntilKilled() {}

    /** Starts with a data file and folders of migrations; without folders, with those shipped. */
    public static void main(String[] args) {
        System.out.println("opening");
        System.out.flush();
        try (Database database = Database.open(args[0])) {
            if (args.length > 1) {
                database.schema().migrate("classpath:sql", args[1]);
            }
        }
    }
}
