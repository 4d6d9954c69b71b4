package jarwise.usecase.samples;

import jarwise.sample.SampleFilter;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How many samples a filter lets through; counted again only when something was recorded. */
public final class SampleNumbers {

    private static final int MOST_ANSWERS = 1_000;

    private final SampleStore samples;
    private final EventStore events;
    private final Map<Question, Known> known = new ConcurrentHashMap<>();

    private record Question(String nursery, SampleFilter filter) {}

    private record Known(long position, int number) {}

    /** Counts in these stores. */
    public SampleNumbers(SampleStore samples, EventStore events) {
        this.samples = samples;
        this.events = events;
    }

    int of(String nursery, SampleFilter filter) {
        long position = events.lastPosition();
        if (known.size() > MOST_ANSWERS) {
            known.clear();
        }
        Known answer = known.get(new Question(nursery, filter));
        if (answer == null || answer.position() != position) {
            answer = new Known(position, samples.count(nursery, filter));
            known.put(new Question(nursery, filter), answer);
        }
        return answer.number();
    }
}
