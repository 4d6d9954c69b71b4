package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.SampleCode;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Writes what the desk does to samples: each deed is an event, all of a form or none. */
public final class SampleLog {

    private final Database database;
    private final EventStore events;
    private final InstantSource clock;

    public SampleLog(Database database, InstantSource clock) {
        this.database = database;
        this.events = new EventStore(database);
        this.clock = clock;
    }

    /** Looks and writes as one: nobody else writes in between. */
    public <T> T alone(Supplier<T> work) {
        return database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    return work.get();
                });
    }

    /** Adds deeds to a sample, in order. */
    public void append(String nursery, String person, SampleCode sample, List<Deed> deeds) {
        String device = "desk-" + nursery;
        long sequence = events.lastSequence(device);
        Instant now = clock.instant();
        List<SampleEvent> added = new ArrayList<>();
        for (Deed deed : deeds) {
            EventId id = new EventId(device, ++sequence);
            added.add(new SampleEvent(id, sample, now, person, Optional.empty(), deed));
        }
        events.append(nursery, added);
    }

    /** {@return what time it is} */
    public Instant now() {
        return clock.instant();
    }

    /** {@return whether there is such a sample} */
    public boolean knows(String nursery, SampleCode sample) {
        return events.fold(nursery, sample).isPresent();
    }

    /**
     * {@return everything known of a sample}
     *
     * @throws Refused if there is none
     */
    public SampleFold find(String nursery, SampleCode sample) {
        return events.fold(nursery, sample)
                .orElseThrow(() -> new Refused(Message.of("sample.unknown", sample.text())));
    }

    /** {@return whether it was lost, spilled or discarded, and this was not taken back} */
    public static boolean hasEnded(SampleFold fold) {
        return standing(fold).stream()
                .anyMatch(
                        event ->
                                event.deed() instanceof Deed.StepTaken step
                                        && step.step().endsWithoutCount());
    }

    /** {@return the events of a sample that no later one has taken back or replaced} */
    public static List<SampleEvent> standing(SampleFold fold) {
        Set<EventId> slips = new HashSet<>();
        for (SampleEvent event : fold.history()) {
            if (event.deed() instanceof Deed.Voided voided) {
                slips.add(voided.slip());
            } else if (event.deed() instanceof Deed.Reopened reopened) {
                slips.add(reopened.done());
            } else if (event.deed() instanceof Deed.StepTaken step) {
                step.replaces().ifPresent(slips::add);
            }
        }
        return fold.history().stream().filter(event -> !slips.contains(event.id())).toList();
    }
}
