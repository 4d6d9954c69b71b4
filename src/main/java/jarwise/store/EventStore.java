package jarwise.store;

import jarwise.base.InvalidInput;
import jarwise.sample.SampleCode;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.wire.DeedJson;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * The event log: append-only, each event once, chained by hashes. The read model is brought up to
 * date in the same transaction, so pages never see a count without its event.
 */
public final class EventStore {

    private static final String COLUMNS = "device, sequence, sample, at, person, batch, deed";

    /** Well below the number of parameters that either database takes in one statement. */
    private static final int CODES_AT_ONCE = 500;

    private final Database database;

    public EventStore(Database database) {
        this.database = database;
    }

    /**
     * Adds events, all or none. An event that is already there is left as it is.
     *
     * @return how many were new
     * @throws InvalidInput if an identity is already there with another content
     */
    public int append(String nursery, List<SampleEvent> events) {
        return database.write(handle -> append(handle, nursery, events));
    }

    /** The same inside a transaction of this package. */
    int append(Handle handle, String nursery, List<SampleEvent> events) {
        handle.createQuery(database.dialect().appendLock()).mapToMap().list();
        List<SampleEvent> fresh = withoutKnown(handle, nursery, events);
        if (!fresh.isEmpty()) {
            insert(handle, nursery, fresh);
            new ReadModel(handle, nursery)
                    .refresh(
                            fresh.stream()
                                    .map(SampleEvent::sample)
                                    .collect(Collectors.toCollection(TreeSet::new)));
        }
        return fresh.size();
    }

    /** {@return the events of one sample, in the order in which they came in} */
    public List<SampleEvent> ofSample(String nursery, SampleCode sample) {
        return database.read(handle -> ofSample(handle, nursery, sample));
    }

    static List<SampleEvent> ofSample(Handle handle, String nursery, SampleCode sample) {
        return handle.createQuery(
                        "select "
                                + COLUMNS
                                + " from event where nursery = :nursery and sample = :sample"
                                + " order by position")
                .bind("nursery", nursery)
                .bind("sample", sample.text())
                .map((row, context) -> EventRow.read(row))
                .list();
    }

    /** {@return the events of some samples, by sample; a sample without events is missing} */
    public Map<SampleCode, List<SampleEvent>> ofSamples(
            String nursery, Collection<SampleCode> samples) {
        Map<SampleCode, List<SampleEvent>> events = new HashMap<>();
        List<String> codes = samples.stream().map(SampleCode::text).distinct().toList();
        for (int from = 0; from < codes.size(); from += CODES_AT_ONCE) {
            List<String> some = codes.subList(from, Math.min(codes.size(), from + CODES_AT_ONCE));
            database.read(handle -> ofSamples(handle, nursery, some))
                    .forEach(
                            event ->
                                    events.computeIfAbsent(
                                                    event.sample(), code -> new ArrayList<>())
                                            .add(event));
        }
        return events;
    }

    private static List<SampleEvent> ofSamples(Handle handle, String nursery, List<String> codes) {
        return handle.createQuery(
                        "select "
                                + COLUMNS
                                + " from event where nursery = :nursery and sample in (<codes>)"
                                + " order by position")
                .bind("nursery", nursery)
                .bindList("codes", codes)
                .map((row, context) -> EventRow.read(row))
                .list();
    }

    /**
     * Makes other appends wait until the running transaction ends, so that what was read before an
     * append still holds at it.
     */
    public void holdOthersBack() {
        database.write(
                handle -> handle.createQuery(database.dialect().appendLock()).mapToMap().list());
    }

    /** {@return the events that came with one import, in order} */
    public List<SampleEvent> ofBatch(String nursery, String batch) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select "
                                                + COLUMNS
                                                + " from event where nursery = :nursery"
                                                + " and batch = :batch order by position")
                                .bind("nursery", nursery)
                                .bind("batch", batch)
                                .map((row, context) -> EventRow.read(row))
                                .list());
    }

    /** {@return events after a position, at most {@code most}, in order} */
    public List<SampleEvent> after(long position, int most) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select "
                                                + COLUMNS
                                                + " from event where position > :position"
                                                + " order by position limit :most")
                                .bind("position", position)
                                .bind("most", most)
                                .map((row, context) -> EventRow.read(row))
                                .list());
    }

    /** {@return the highest sequence of a device; 0 when it has sent nothing yet} */
    public long lastSequence(String device) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select coalesce(max(sequence), 0) from event"
                                                + " where device = :device")
                                .bind("device", device)
                                .mapTo(Long.class)
                                .one());
    }

    /** {@return the number up to which every event of a device has arrived; 0 without its first} */
    public long completeUpTo(String device) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select coalesce(min(sequence), 0) from event e where"
                                                + " device = :device and exists (select 1 from"
                                                + " event where device = :device and sequence = 1)"
                                                + " and not exists (select 1 from event n where"
                                                + " n.device = e.device"
                                                + " and n.sequence = e.sequence + 1)")
                                .bind("device", device)
                                .mapTo(Long.class)
                                .one());
    }

    private static List<SampleEvent> withoutKnown(
            Handle handle, String nursery, List<SampleEvent> events) {
        Map<EventId, SampleEvent> distinct = new LinkedHashMap<>();
        events.forEach(event -> distinct.merge(event.id(), event, EventStore::sameOrRefused));
        Map<EventId, String> known = known(handle, distinct.values());
        List<SampleEvent> fresh = new ArrayList<>();
        for (SampleEvent event : distinct.values()) {
            String there = known.get(event.id());
            if (there == null) {
                fresh.add(event);
            } else if (!there.equals(identityText(nursery, event))) {
                throw anotherContent(event.id());
            }
        }
        return fresh;
    }

    private static SampleEvent sameOrRefused(SampleEvent one, SampleEvent other) {
        if (one.equals(other)) {
            return one;
        }
        throw anotherContent(one.id());
    }

    private static InvalidInput anotherContent(EventId id) {
        return new InvalidInput(
                ("Event %d of device '%s' is already recorded with another content; nothing was"
                                + " saved. Maybe two devices use one name.")
                        .formatted(id.sequence(), id.device()));
    }

    private static String identityText(String nursery, SampleEvent event) {
        return nursery + "\n" + event.sample() + "\n" + DeedJson.write(event.deed());
    }

    private static Map<EventId, String> known(Handle handle, Iterable<SampleEvent> events) {
        Map<String, long[]> ranges = new HashMap<>();
        for (SampleEvent event : events) {
            long sequence = event.id().sequence();
            long[] range =
                    ranges.computeIfAbsent(
                            event.id().device(), device -> new long[] {sequence, sequence});
            range[0] = Math.min(range[0], sequence);
            range[1] = Math.max(range[1], sequence);
        }
        Map<EventId, String> known = new HashMap<>();
        ranges.forEach(
                (device, range) ->
                        handle.createQuery(
                                        "select device, sequence, nursery, sample, deed from event"
                                            + " where device = :device and sequence between :low"
                                            + " and :high")
                                .bind("device", device)
                                .bind("low", range[0])
                                .bind("high", range[1])
                                .map(
                                        (row, context) ->
                                                Map.entry(
                                                        new EventId(
                                                                row.getString(1), row.getLong(2)),
                                                        row.getString(3)
                                                                + "\n"
                                                                + row.getString(4)
                                                                + "\n"
                                                                + row.getString(5)))
                                .forEach(entry -> known.put(entry.getKey(), entry.getValue())));
        return known;
    }

    private static void insert(Handle handle, String nursery, List<SampleEvent> events) {
        EventChain chain = EventChain.last(handle);
        PreparedBatch batch =
                handle.prepareBatch(
                        "insert into event (position, nursery, "
                                + COLUMNS
                                + ", chain) values (:position, :nursery, :device, :sequence,"
                                + " :sample, :at, :person, :batch, :deed, :chain)");
        for (SampleEvent event : events) {
            EventRow row = EventRow.of(nursery, event);
            chain = chain.next(row);
            row.bind(batch).bind("position", chain.position()).bind("chain", chain.hash()).add();
        }
        batch.execute();
    }

    /**
     * {@return the position of the last event, which grows with every change; 0 before the first}
     */
    public long lastPosition() {
        return database.read(
                handle ->
                        handle.createQuery("select coalesce(max(position), 0) from event")
                                .mapTo(Long.class)
                                .one());
    }

    /**
     * A sample that events were added to.
     *
     * @param nursery slug of the site
     * @param sample its code
     * @param day on which it was cut, as far as is known now
     */
    public record Changed(String nursery, SampleCode sample, Optional<LocalDate> day) {}

    /** {@return samples with events after a position, at most so many} */
    public List<Changed> changedAfter(long position, int most) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select distinct e.nursery, e.sample, s.collected_on"
                                                + " from event e left join sample s"
                                                + " on s.nursery = e.nursery and s.code = e.sample"
                                                + " where e.position > :position limit :most")
                                .bind("position", position)
                                .bind("most", most)
                                .map((row, context) -> changed(row))
                                .list());
    }

    private static Changed changed(ResultSet row) throws SQLException {
        return new Changed(
                row.getString(1),
                new SampleCode(row.getString(2)),
                new Columns(row).optionalDay("collected_on"));
    }

    /** {@return how many events there are} */
    public long count() {
        return database.read(
                handle -> handle.createQuery("select count(*) from event").mapTo(Long.class).one());
    }

    /**
     * Follows the chain from its first event.
     *
     * @return the position of the first event that does not fit; empty when all do
     */
    public OptionalLong firstBrokenLink() {
        return database.read(EventChain::firstBrokenLink);
    }

    /** {@return samples whose read model differs from the fold of their events} */
    public List<String> staleSamples(String nursery) {
        return database.read(handle -> new ReadModel(handle, nursery).stale());
    }

    /** {@return what is known of a sample from its events; empty where it has none} */
    public Optional<jarwise.tally.SampleFold> fold(String nursery, SampleCode sample) {
        return database.read(handle -> new ReadModel(handle, nursery).fold(sample));
    }
}
