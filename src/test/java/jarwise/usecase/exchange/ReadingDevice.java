package jarwise.usecase.exchange;

import jarwise.sample.SampleCode;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A device that somebody reads filters with: what it recorded, and what it heard of others. */
public final class ReadingDevice {

    private final String name;
    private final List<SampleEvent> log = new ArrayList<>();
    private final Map<EventId, SampleEvent> heard = new LinkedHashMap<>();

    ReadingDevice(String name) {
        this.name = name;
    }

    void record(SampleCode filter, Deed deed) {
        EventId id = new EventId(name, log.size() + 1L);
        // The clocks of devices differ by hours; nothing may depend on them.
        long clock = 60L * Math.floorMod(name.hashCode(), 300) + log.size();
        log.add(new SampleEvent(id, filter, Phone.at(clock), "SC-1", Optional.empty(), deed));
    }

    /** Hears what another device has recorded so far, up to a number. */
    void hear(ReadingDevice other, int upTo) {
        other.log.subList(0, upTo).forEach(event -> heard.put(event.id(), event));
    }

    /** {@return what it knows of a filter} */
    List<SampleEvent> known(SampleCode filter) {
        List<SampleEvent> known = new ArrayList<>(heard.values());
        known.addAll(log);
        known.removeIf(event -> !event.sample().equals(filter));
        return known;
    }

    public String name() {
        return name;
    }

    /** {@return everything it recorded, by number} */
    public List<SampleEvent> log() {
        return List.copyOf(log);
    }
}
