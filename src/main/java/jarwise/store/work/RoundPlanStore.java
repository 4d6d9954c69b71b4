package jarwise.store.work;

import jarwise.base.InvalidInput;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.plan.Spot;
import jarwise.plan.Withdrawal;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jdbi.v3.core.Handle;

/** Rounds with their labelled jars. Nothing of them is changed; a round is withdrawn. */
public final class RoundPlanStore {

    private final Database database;

    public RoundPlanStore(Database database) {
        this.database = database;
    }

    /**
     * Keeps a round.
     *
     * @throws InvalidInput if its name or the code of a jar is taken
     */
    public void put(String nursery, RoundPlan plan) {
        database.write(
                handle -> {
                    if (find(handle, nursery, plan.id()).isPresent()) {
                        throw new InvalidInput(
                                "There is already a round %s. Maybe it was saved before."
                                        .formatted(plan.id()));
                    }
                    insert(handle, nursery, plan);
                    return plan;
                });
    }

    /** {@return the round of this name, withdrawn or not} */
    public Optional<RoundPlan> find(String nursery, String id) {
        return database.read(handle -> find(handle, nursery, id));
    }

    /** {@return the round that a jar belongs to} */
    public Optional<RoundPlan> ofJar(String nursery, SampleCode code) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select round from round_jar where nursery = :nursery"
                                                + " and sample = :sample")
                                .bind("nursery", nursery)
                                .bind("sample", code.text())
                                .mapTo(String.class)
                                .findOne()
                                .flatMap(id -> find(handle, nursery, id)));
    }

    /** {@return rounds of the days {@code from} to {@code to}, by day, then name} */
    public List<RoundPlan> plans(String nursery, LocalDate from, LocalDate to) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from round_plan where nursery = :nursery"
                                                + " and day >= :from and day <= :to"
                                                + " order by day, id")
                                .bind("nursery", nursery)
                                .bind("from", Row.plain(from))
                                .bind("to", Row.plain(to))
                                .map((row, context) -> read(handle, nursery, new Columns(row)))
                                .list());
    }

    /**
     * Withdraws a round; it stays on record.
     *
     * @throws InvalidInput if there is none, or it was withdrawn before
     */
    public void withdraw(String nursery, String id, Withdrawal withdrawal) {
        int withdrawn =
                database.write(
                        handle ->
                                handle.createUpdate(
                                                "update round_plan set withdrawn_at = :at,"
                                                        + " withdrawn_by = :by,"
                                                        + " withdrawn_reason = :reason"
                                                        + " where nursery = :nursery and id = :id"
                                                        + " and withdrawn_at is null")
                                        .bind("at", Row.plain(withdrawal.at()))
                                        .bind("by", withdrawal.by())
                                        .bind("reason", withdrawal.reason())
                                        .bind("nursery", nursery)
                                        .bind("id", id)
                                        .execute());
        if (withdrawn == 0) {
            throw new InvalidInput(
                    "There is no round %s to withdraw. Maybe it was withdrawn before."
                            .formatted(id));
        }
    }

    /** {@return the rounds that were withdrawn, by name} */
    public Map<String, Withdrawal> withdrawals(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from round_plan where nursery = :nursery"
                                                + " and withdrawn_at is not null")
                                .bind("nursery", nursery)
                                .reduceResultSet(
                                        new HashMap<String, Withdrawal>(),
                                        (all, row, context) -> {
                                            Columns columns = new Columns(row);
                                            all.put(columns.text("id"), withdrawal(columns));
                                            return all;
                                        }));
    }

    private static Withdrawal withdrawal(Columns row) throws SQLException {
        return new Withdrawal(
                row.instant("withdrawn_at"),
                row.text("withdrawn_by"),
                row.text("withdrawn_reason"));
    }

    private static void insert(Handle handle, String nursery, RoundPlan plan) {
        Row.of("round_plan")
                .with("nursery", nursery)
                .with("id", plan.id())
                .with("day", plan.day())
                .with("method", plan.method())
                .with("question", plan.question())
                .with("seed", plan.seed())
                .with("planned_by", plan.plannedBy())
                .with("planned_at", plan.plannedAt())
                .insert(handle);
        plan.numbers()
                .forEach(
                        (name, value) ->
                                Row.of("round_number")
                                        .with("nursery", nursery)
                                        .with("round", plan.id())
                                        .with("name", name)
                                        .with("value", value)
                                        .insert(handle));
        plan.jars().forEach(jar -> insert(handle, nursery, plan.id(), jar));
    }

    private static void insert(Handle handle, String nursery, String round, PlannedJar jar) {
        Row.of("round_jar")
                .with("nursery", nursery)
                .with("sample", jar.code().text())
                .with("round", round)
                .with("walk", jar.walk())
                .with("house", jar.house())
                .with("bench", jar.bench())
                .with("crop_lot", jar.cropLot())
                .with("variety", jar.variety())
                .with("purpose", jar.purpose())
                .with("role", jar.role())
                .with("spot_along", jar.spot().map(Spot::along))
                .with("spot_across", jar.spot().map(Spot::across))
                .with("growing_points", jar.growingPoints())
                .insert(handle);
    }

    private static Optional<RoundPlan> find(Handle handle, String nursery, String id) {
        return handle.createQuery("select * from round_plan where nursery = :nursery and id = :id")
                .bind("nursery", nursery)
                .bind("id", id)
                .map((row, context) -> read(handle, nursery, new Columns(row)))
                .findOne();
    }

    private static RoundPlan read(Handle handle, String nursery, Columns row) throws SQLException {
        String id = row.text("id");
        return new RoundPlan(
                id,
                row.day("day"),
                row.word(SamplingMethod.class, "method"),
                row.word(RoundQuestion.class, "question"),
                row.longNumber("seed"),
                numbers(handle, nursery, id),
                jars(handle, nursery, id),
                row.text("planned_by"),
                row.instant("planned_at"));
    }

    private static Map<String, String> numbers(Handle handle, String nursery, String id) {
        return handle.createQuery(
                        "select name, value from round_number where nursery = :nursery"
                                + " and round = :round")
                .bind("nursery", nursery)
                .bind("round", id)
                .reduceResultSet(
                        new HashMap<String, String>(),
                        (all, row, context) -> {
                            all.put(row.getString("name"), row.getString("value"));
                            return all;
                        });
    }

    private static List<PlannedJar> jars(Handle handle, String nursery, String id) {
        return handle.createQuery(
                        "select * from round_jar where nursery = :nursery and round = :round"
                                + " order by walk")
                .bind("nursery", nursery)
                .bind("round", id)
                .map((row, context) -> jar(new Columns(row)))
                .list();
    }

    private static PlannedJar jar(Columns row) throws SQLException {
        OptionalDouble along = row.optionalNumber("spot_along");
        OptionalDouble across = row.optionalNumber("spot_across");
        return new PlannedJar(
                new SampleCode(row.text("sample")),
                row.whole("walk"),
                row.text("house"),
                row.text("bench"),
                row.optional("crop_lot"),
                row.optional("variety"),
                row.word(Purpose.class, "purpose"),
                row.word(SampleRole.class, "role"),
                along.isPresent()
                        ? Optional.of(new Spot(along.getAsDouble(), across.getAsDouble()))
                        : Optional.empty(),
                row.whole("growing_points"));
    }
}
