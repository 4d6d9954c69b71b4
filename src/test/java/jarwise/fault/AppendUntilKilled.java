package jarwise.fault;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.tally.SampleEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A process that counts until somebody kills it. It prints the number of each press after it was
 * saved, never before: what is printed was acknowledged.
 */
final class AppendUntilKilled {

    private AppendUntilKilled() {}

    /** Starts with a data file, the first press to make, and a seed for the sizes of batches. */
    public static void main(String[] args) {
        Random random = new Random(Long.parseLong(args[2]));
        try (Database database = Database.open(args[0])) {
            EventStore events = new EventStore(database);
            long next = Long.parseLong(args[1]);
            while (true) {
                List<SampleEvent> batch = new ArrayList<>();
                int size = 1 + random.nextInt(8);
                for (int i = 0; i < size; i++) {
                    batch.add(FaultyData.press(next++));
                }
                events.append(FaultyData.NURSERY, batch);
                System.out.println(next - 1);
                System.out.flush();
            }
        }
    }
}
