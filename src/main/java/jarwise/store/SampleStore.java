package jarwise.store;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.tally.StageKey;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;

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

    /** Well below the number of parameters that either database takes in one statement. */
    private static final int CODES_AT_ONCE = 500;

    private final Database database;

    public SampleStore(Database database) {
        this.database = database;
    }

    /** {@return the sample with this code} */
    public Optional<CollectedSample> find(String nursery, SampleCode code) {
        return database.read(handle -> SampleRow.find(handle, nursery, code));
    }

    /** {@return the samples with these codes that are known, in the order of the codes} */
    public Map<SampleCode, CollectedSample> find(String nursery, List<SampleCode> codes) {
        Map<SampleCode, CollectedSample> found = new HashMap<>();
        for (int from = 0; from < codes.size(); from += CODES_AT_ONCE) {
            List<String> some =
                    codes.subList(from, Math.min(codes.size(), from + CODES_AT_ONCE)).stream()
                            .map(SampleCode::text)
                            .toList();
            database.read(
                            handle ->
                                    handle.createQuery(
                                                    "select * from sample where nursery = :nursery"
                                                            + " and code in (<codes>)")
                                            .bindList("codes", some)
                                            .bind("nursery", nursery)
                                            .map((row, context) -> SampleRow.read(row))
                                            .list())
                    .forEach(sample -> found.put(sample.code(), sample));
        }
        Map<SampleCode, CollectedSample> ordered = new LinkedHashMap<>();
        for (SampleCode code : codes) {
            CollectedSample sample = found.get(code);
            if (sample != null) {
                ordered.put(code, sample);
            }
        }
        return ordered;
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

    /** {@return codes of the samples cut on a day, in any order} */
    public List<String> codes(String nursery, LocalDate day) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select code from sample where nursery = :nursery"
                                                + " and collected_on = :day")
                                .bind("nursery", nursery)
                                .bind("day", day.toString())
                                .mapTo(String.class)
                                .list());
    }

    private static String condition(SampleFilter filter) {
        return "nursery = :nursery"
                + (filter.part().isEmpty() ? "" : " and lower(code) like :part escape '!'")
                + (filter.state().isPresent() ? " and state = :state" : "")
                + (filter.day().isPresent() ? " and collected_on = :day" : "");
    }

    private static Query bound(Query query, String nursery, SampleFilter filter) {
        Query bound = query.bind("nursery", nursery);
        if (!filter.part().isEmpty()) {
            bound = bound.bind("part", contains(filter.part()));
        }
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

    /** {@return counts that a mean may be made of, by day and code} */
    public List<CountedSample> counts(CountQuery query) {
        return tallied(query.nursery(), query.from(), query.to()).stream()
                .flatMap(tallied -> query.of(tallied).stream())
                .toList();
    }

    /** {@return samples cut from one day to another with all their counts, by day and code} */
    public List<TalliedSample> tallied(String nursery, LocalDate from, LocalDate to) {
        Map<String, Map<StageKey, Long>> counts = countsBySample(nursery, from, to);
        return between(nursery, from, to).stream()
                .map(
                        sample ->
                                new TalliedSample(
                                        sample,
                                        counts.getOrDefault(sample.code().text(), Map.of())))
                .toList();
    }

    /** The samples of these days come first, or every count ever made would be looked at. */
    private Map<String, Map<StageKey, Long>> countsBySample(
            String nursery, LocalDate from, LocalDate to) {
        Map<StageKey, StageKey> shared = new HashMap<>();
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select c.sample, c.pest, c.life_stage, c.individuals from"
                                                + " sample s cross join sample_count c"
                                                + " where c.nursery = s.nursery"
                                                + " and c.sample = s.code"
                                                + " and s.nursery = :nursery and"
                                                + DAYS)
                                .bind("nursery", nursery)
                                .bind("from", from.toString())
                                .bind("to", to.toString())
                                .reduceResultSet(
                                        new HashMap<String, Map<StageKey, Long>>(),
                                        (counts, row, context) -> {
                                            StageKey stage =
                                                    new StageKey(
                                                            row.getString(2), row.getString(3));
                                            counts.computeIfAbsent(
                                                            row.getString(1),
                                                            code -> new HashMap<>())
                                                    .put(
                                                            shared.computeIfAbsent(
                                                                    stage, same -> same),
                                                            row.getLong(4));
                                            return counts;
                                        }));
    }

    /** {@return samples of these roles with their counts, by day and code} */
    public List<TalliedSample> tallied(String nursery, Collection<SampleRole> roles) {
        List<CollectedSample> there =
                database.read(
                        handle ->
                                handle.createQuery(
                                                "select * from sample where nursery = :nursery"
                                                        + " and role in (<roles>)"
                                                        + " order by collected_on, code")
                                        .bindList(
                                                "roles",
                                                roles.stream().map(SampleRow::word).toList())
                                        .bind("nursery", nursery)
                                        .map((row, context) -> SampleRow.read(row))
                                        .list());
        return withCounts(nursery, there);
    }

    /** {@return the samples with these codes that are known, with their counts} */
    public List<TalliedSample> tallied(String nursery, List<SampleCode> codes) {
        return withCounts(nursery, List.copyOf(find(nursery, codes).values()));
    }

    private List<TalliedSample> withCounts(String nursery, List<CollectedSample> there) {
        Map<String, Map<StageKey, Long>> counts = new HashMap<>();
        for (int from = 0; from < there.size(); from += CODES_AT_ONCE) {
            List<String> some =
                    there.subList(from, Math.min(there.size(), from + CODES_AT_ONCE)).stream()
                            .map(sample -> sample.code().text())
                            .toList();
            database.read(
                    handle ->
                            handle.createQuery(
                                            "select sample, pest, life_stage, individuals from"
                                                    + " sample_count where nursery = :nursery"
                                                    + " and sample in (<codes>)")
                                    .bindList("codes", some)
                                    .bind("nursery", nursery)
                                    .reduceResultSet(counts, SampleStore::counted));
        }
        return there.stream()
                .map(
                        one ->
                                new TalliedSample(
                                        one, counts.getOrDefault(one.code().text(), Map.of())))
                .toList();
    }

    private static Map<String, Map<StageKey, Long>> counted(
            Map<String, Map<StageKey, Long>> counts, ResultSet row, StatementContext context)
            throws SQLException {
        counts.computeIfAbsent(row.getString(1), code -> new HashMap<>())
                .put(new StageKey(row.getString(2), row.getString(3)), row.getLong(4));
        return counts;
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
