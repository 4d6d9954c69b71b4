package jarwise.usecase.exchange;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.pest.Pests;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.samples.FirstCounts;
import jarwise.wire.exchange.EventBatch;
import jarwise.wire.exchange.ExchangeJson;
import java.time.DateTimeException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Takes the events that a device recorded on its own. Each is taken once, a batch whole or not at
 * all, and the answer says how far everything has arrived: what comes after a gap is sent again.
 */
public final class TakeEvents {

    /** More than a day's work on a round in one batch. */
    private static final int MOST_EVENTS = 500;

    private static final int LONGEST_FACT = 500;
    private static final int LONGEST_PERSON = 60;

    /** A name made on a device is random: nobody types one, and no two are the same. */
    private static final Pattern DEVICE = Pattern.compile("[a-z]{2,12}-[0-9a-f]{16,40}");

    private final Database database;
    private final EventStore events;
    private final DerivedSamples derived;
    private final PestStore pests;
    private final FirstCounts first;

    /**
     * Takes events into a database.
     *
     * @param first acts on filters that are counted for the first time
     */
    public TakeEvents(Database database, FirstCounts first) {
        this.database = database;
        this.events = new EventStore(database);
        this.derived =
                new DerivedSamples(new SampleStore(database), new SeededFilterStore(database));
        this.pests = new PestStore(database);
        this.first = first;
    }

    /**
     * Takes a batch.
     *
     * @return the number up to which every event of the device is on record; 0 for none
     * @throws Refused if any event cannot be so; then nothing of the batch is on record
     */
    public long run(String nursery, EventBatch batch) {
        if (!DEVICE.matcher(batch.device()).matches()) {
            throw new Refused(Message.of("exchange.device", batch.device()));
        }
        if (batch.events().size() > MOST_EVENTS) {
            throw new Refused(Message.of("exchange.too-many", String.valueOf(MOST_EVENTS)));
        }
        return database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    check(nursery, batch.events());
                    first.around(
                            nursery,
                            batch.events().stream().map(SampleEvent::sample).toList(),
                            () -> events.append(nursery, batch.events()));
                    return events.completeUpTo(batch.device());
                });
    }

    private void check(String nursery, List<SampleEvent> batch) {
        Pests known = pests.pests();
        batch.stream()
                .collect(Collectors.groupingBy(SampleEvent::sample))
                .forEach((code, events) -> derived.check(nursery, code, events));
        for (SampleEvent event : batch) {
            try {
                checkWords(event);
                checkStages(event.deed(), known);
                // A record that does not count now may count later: each must make sense alone.
                SampleFold.of(event.sample(), List.of(event), Map.of());
            } catch (InvalidInput | DateTimeException e) {
                throw ExchangeJson.badEvent(String.valueOf(event.id().sequence()), e);
            }
        }
    }

    private static void checkWords(SampleEvent event) {
        if (event.person().length() > LONGEST_PERSON) {
            throw new InvalidInput("'person' is too long");
        }
        if (event.deed() instanceof Deed.StepTaken step) {
            step.facts().forEach(TakeEvents::checkFact);
        }
    }

    private static void checkFact(String name, String value) {
        if (!Facts.ALL.contains(name)) {
            throw new InvalidInput("'%s' is no fact of a step".formatted(name));
        }
        if (value.length() > LONGEST_FACT) {
            throw new InvalidInput(
                    "'%s' is longer than %d characters".formatted(name, LONGEST_FACT));
        }
    }

    private static void checkStages(Deed deed, Pests known) {
        if (deed instanceof Deed.Counted counted) {
            boolean there =
                    known.find(counted.pest()).stream()
                            .flatMap(pest -> pest.lifeStages().stream())
                            .anyMatch(stage -> stage.code().equals(counted.lifeStage()));
            if (!there) {
                throw new InvalidInput(
                        "%s has no stage '%s'".formatted(counted.pest(), counted.lifeStage()));
            }
        } else if (deed instanceof Deed.FilterDone done) {
            for (String pest : done.pests()) {
                if (known.find(pest).isEmpty()) {
                    throw new InvalidInput("there is no pest '%s' here".formatted(pest));
                }
            }
        }
    }
}
