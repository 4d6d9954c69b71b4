package jarwise.wire.exchange;

import jarwise.tally.SampleEvent;
import java.util.List;

/**
 * Events of one device, as it sends them.
 *
 * @param device the name the device gave itself
 * @param events any part of what it recorded, in any order
 */
public record EventBatch(String device, List<SampleEvent> events) {

    public EventBatch {
        events = List.copyOf(events);
    }
}
