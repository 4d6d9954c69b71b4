package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes down what happens, as the devices of the site would, and sends it in batches. */
final class Diary {

    private final Map<String, Long> lastSequence = new HashMap<>();
    private final List<List<SampleEvent>> batches = new ArrayList<>();
    private List<SampleEvent> open = new ArrayList<>();

    /** One device in the hands of one person. */
    record Hand(String device, String person) {}

    EventId write(Hand hand, Instant at, SampleCode sample, Deed deed) {
        EventId id = new EventId(hand.device(), lastSequence.merge(hand.device(), 1L, Long::sum));
        open.add(new SampleEvent(id, sample, at, hand.person(), Optional.empty(), deed));
        return id;
    }

    /** The device finds its network: what was written since then goes out together. */
    void send() {
        if (!open.isEmpty()) {
            batches.add(List.copyOf(open));
            open = new ArrayList<>();
        }
    }

    /** The answer to the last batch was lost, so it is sent again, whole. */
    void sendAgain() {
        batches.add(batches.get(batches.size() - 1));
    }

    List<List<SampleEvent>> batches() {
        send();
        return List.copyOf(batches);
    }
}
