package jarwise.store;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.tally.StageKey;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.statement.Query;

/** Samples and their counts, as pages read them. Written by {@link EventStore} alone. */
public final class SampleStore {

    /** All methods by name, for the index of the days begins with the method. */
    private static final String DAYS =
            Stream.of(SamplingMethod.values())
                    .map(method -> "'" + SampleRow.word(method) + "'")
                    .collect(
                            Collectors.joining(
                                    ", ",
                                    " method in (",
                                    ") and collected_on between :from and :to"));

    private final Database database;

    public SampleStore(Database database) {
        this.database = database;
    }

    /** {@return the sample with this code} */
    public Optional<CollectedSample> find(String nursery, SampleCode code) {
        return database.read(handle -> SampleRow.find(handle, nursery, code));
    }

    /** {@return what was read in a sample, zeros included} */
    public SortedMap<StageKey, Long> countsOf(String nursery, SampleCode code) {
        return database.read(handle -> ReadModel.countsOf(handle, nursery, code));
    }

    /** {@return samples in these states, newest day first, then by code} */
    public List<CollectedSample> inStates(String nursery, Collection<SampleState> states) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from sample where nursery = :nursery"
                                                + " and state in (<states>)"
                                                + " order by collected_on desc, code")
                                .bindList("states", states.stream().map(SampleRow::word).toList())
                                .bind("nursery", nursery)
                                .map((row, context) -> SampleRow.read(row))
                                .list());
    }

    /**
     * A page of samples, newest day first.
     *
     * @param part part of a code, any case; empty for all
     * @param skip how many to leave out at the start
     * @param most how many at most
     */
    public List<CollectedSample> list(String nursery, String part, int skip, int most) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from sample where nursery = :nursery"
                                                + " and lower(code) like :part escape '!'"
                                                + " order by collected_on desc, code"
                                                + " limit :most offset :skip")
                                .bind("nursery", nursery)
                                .bind("part", contains(part))
                                .bind("most", most)
                                .bind("skip", skip)
                                .map((row, context) -> SampleRow.read(row))
                                .list());
    }

    /** {@return a page of the samples a filter lets through, those cut last first} */
    public List<CollectedSample> list(String nursery, SampleFilter filter, int skip, int most) {
        String sql =
                "select * from sample where "
                        + condition(filter)
                        + " order by collected_on desc nulls last, code limit :most offset :skip";
        return database.read(
                handle ->
                        bound(handle.createQuery(sql), nursery, filter)
                                .bind("most", most)
                                .bind("skip", skip)
                                .map((row, context) -> SampleRow.read(row))
                                .list());
    }

    /** {@return how many samples a filter lets through} */
    public int count(String nursery, SampleFilter filter) {
        String sql = "select count(*) from sample where " + condition(filter);
        return database.read(
                handle ->
                        bound(handle.createQuery(sql), nursery, filter).mapTo(Integer.class).one());
    }

    /** {@return the last days on which samples were cut, the newest first} */
    public List<LocalDate> days(String nursery) {
        return database.read(
                handle ->
                        handle
                                .createQuery(
                                        "select distinct collected_on from sample where nursery ="
                                                + " :nursery and collected_on is not null"
                                                + " order by collected_on desc limit 60")
                                .bind("nursery", nursery)
                                .mapTo(String.class)
                                .list()
                                .stream()
                                .map(LocalDate::parse)
                                .toList());
    }

    private static String condition(SampleFilter filter) {
        return "nursery = :nursery and lower(code) like :part escape '!'"
                + (filter.state().isPresent() ? " and state = :state" : "")
                + (filter.day().isPresent() ? " and collected_on = :day" : "");
    }

    private static Query bound(Query query, String nursery, SampleFilter filter) {
        Query bound = query.bind("nursery", nursery).bind("part", contains(filter.part()));
        if (filter.state().isPresent()) {
            bound = bound.bind("state", SampleRow.word(filter.state().get()));
        }
        return filter.day().isPresent() ? bound.bind("day", filter.day().get().toString()) : bound;
    }

    private static String contains(String part) {
        String escaped =
                part.toLowerCase(java.util.Locale.ROOT)
                        .replace("!", "!!")
                        .replace("%", "!%")
                        .replace("_", "!_");
        return "%" + escaped + "%";
    }

    /** {@return samples cut from one day to another, both included, by day and code} */
    public List<CollectedSample> between(String nursery, LocalDate from, LocalDate to) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from sample where nursery = :nursery and"
                                                + DAYS
                                                + " order by collected_on, code")
                                .bind("nursery", nursery)
                                .bind("from", from.toString())
                                .bind("to", to.toString())
                                .map((row, context) -> SampleRow.read(row))
                                .list());
    }

    /** {@return samples for which two records of one step wait for an answer} */
    public List<CollectedSample> withOpenQuestions(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from sample where nursery = :nursery"
                                                + " and open_questions > 0 order by code")
                                .bind("nursery", nursery)
                                .map((row, context) -> SampleRow.read(row))
                                .list());
    }

    /** {@return how many samples the nursery has} */
    public int count(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery("select count(*) from sample where nursery = :nursery")
                                .bind("nursery", nursery)
                                .mapTo(Integer.class)
                                .one());
    }

    /**
     * Counts of crop samples, individuals added up over the stages asked for. A sample in which one
     * of these stages was not read is left out: not read is no zero.
     */
    public List<CountedSample> counts(CountQuery query) {
        return database.read(
                handle -> {
                    Query sql =
                            handle.createQuery(query.sql())
                                    .bindList("stages", query.lifeStages())
                                    .bind("nursery", query.nursery())
                                    .bind("method", SampleRow.word(query.method()))
                                    .bind("pest", query.pest())
                                    .bind("from", query.from().toString())
                                    .bind("to", query.to().toString())
                                    .bind("all", query.lifeStages().size());
                    query.bench().ifPresent(bench -> sql.bind("bench", bench));
                    query.variety().ifPresent(variety -> sql.bind("variety", variety));
                    query.house().ifPresent(house -> sql.bind("house", house));
                    query.purpose()
                            .ifPresent(purpose -> sql.bind("purpose", SampleRow.word(purpose)));
                    return sql.map((row, context) -> CountedSample.read(row)).list();
                });
    }

    /** {@return pests of which any stage was read in a crop sample in these days, by code} */
    public List<String> pestsRead(String nursery, LocalDate from, LocalDate to) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select p.code from pest p where p.code in"
                                                + " (select c.pest from sample_count c where"
                                                + " c.nursery = :nursery and c.sample in"
                                                + " (select code from sample where nursery ="
                                                + " :nursery and role = 'crop' and"
                                                + DAYS
                                                + ")) order by p.code")
                                .bind("nursery", nursery)
                                .bind("from", from.toString())
                                .bind("to", to.toString())
                                .mapTo(String.class)
                                .list());
    }

    /** {@return the last day on which any sample was cut; empty before the first} */
    public Optional<LocalDate> lastDay(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select collected_on from sample where nursery ="
                                                + " :nursery and collected_on is not null and"
                                                + " state <> 'planned' order by collected_on desc"
                                                + " limit 1")
                                .bind("nursery", nursery)
                                .mapTo(String.class)
                                .findOne()
                                .map(LocalDate::parse));
    }
}
