package jarwise.store;

import jarwise.sample.CollectedSample;
import jarwise.sample.CollectedSample.Place;
import jarwise.sample.CollectedSample.Reading;
import jarwise.sample.CollectedSample.Times;
import jarwise.sample.CollectedSample.Wash;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.tally.SampleFold;
import jarwise.wire.AttributesJson;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** A sample as a row of the read model, both ways. */
final class SampleRow {

    private static final String[] COLUMNS = {
        "nursery",
        "code",
        "method",
        "purpose",
        "role",
        "state",
        "collected_on",
        "house",
        "bench",
        "crop_lot",
        "crop",
        "variety",
        "sampling_units",
        "fluid",
        "fill",
        "shake_seconds",
        "rinses",
        "condition",
        "cut_at",
        "washed_at",
        "freezer_in_at",
        "freezer_out_at",
        "read_at",
        "reader",
        "cells_read",
        "cells_readable",
        "cells_obscured",
        "minutes",
        "known",
        "recount_of",
        "attributes",
        "open_questions"
    };

    static final String UPSERT =
            "insert into sample ("
                    + String.join(", ", COLUMNS)
                    + ") values ("
                    + Stream.of(COLUMNS).map(name -> ":" + name).collect(Collectors.joining(", "))
                    + ") on conflict (nursery, code) do update set "
                    + Stream.of(COLUMNS)
                            .skip(2)
                            .map(name -> name + " = excluded." + name)
                            .collect(Collectors.joining(", "));

    private SampleRow() {}

    static PreparedBatch bind(PreparedBatch batch, String nursery, SampleFold fold) {
        CollectedSample sample = fold.sample();
        batch.bind("nursery", nursery)
                .bind("code", sample.code().text())
                .bind("method", word(sample.method()))
                .bind("purpose", word(sample.purpose()))
                .bind("role", word(sample.role()))
                .bind("state", word(sample.state()))
                .bind("collected_on", sample.collectedOn().map(LocalDate::toString).orElse(null))
                .bind("sampling_units", sample.samplingUnits())
                .bind("known", boxed(sample.known()))
                .bind("recount_of", sample.recountOf().map(SampleCode::text).orElse(null))
                .bind("attributes", AttributesJson.write(sample.attributes()))
                .bind("open_questions", fold.openQuestions().size());
        bindPlace(batch, sample.place());
        bindWash(batch, sample.wash());
        bindTimes(batch, sample.times());
        bindReading(batch, sample.reading());
        return batch;
    }

    private static void bindPlace(PreparedBatch batch, Place place) {
        batch.bind("house", place.house().orElse(null))
                .bind("bench", place.bench().orElse(null))
                .bind("crop_lot", place.cropLot().orElse(null))
                .bind("crop", place.crop().orElse(null))
                .bind("variety", place.variety().orElse(null));
    }

    private static void bindWash(PreparedBatch batch, Wash wash) {
        batch.bind("fluid", wash.fluid().map(SampleRow::word).orElse(null))
                .bind("fill", wash.fill().map(SampleRow::word).orElse(null))
                .bind("shake_seconds", boxed(wash.shakeSeconds()))
                .bind("rinses", boxed(wash.rinses()))
                .bind("condition", wash.condition().orElse(null));
    }

    private static void bindTimes(PreparedBatch batch, Times times) {
        batch.bind("cut_at", text(times.cut()))
                .bind("washed_at", text(times.washed()))
                .bind("freezer_in_at", text(times.freezerIn()))
                .bind("freezer_out_at", text(times.freezerOut()))
                .bind("read_at", text(times.read()));
    }

    private static void bindReading(PreparedBatch batch, Reading reading) {
        OptionalDouble minutes = reading.minutes();
        batch.bind("reader", reading.reader().orElse(null))
                .bind("cells_read", reading.cellsRead())
                .bind("cells_readable", reading.cellsReadable())
                .bind("cells_obscured", reading.cellsObscured())
                .bind("minutes", minutes.isPresent() ? (Double) minutes.getAsDouble() : null);
    }

    static Optional<CollectedSample> find(Handle handle, String nursery, SampleCode code) {
        return handle.createQuery("select * from sample where nursery = :nursery and code = :code")
                .bind("nursery", nursery)
                .bind("code", code.text())
                .map((row, context) -> read(row))
                .findOne();
    }

    static CollectedSample read(ResultSet row) throws SQLException {
        return new CollectedSample(
                new SampleCode(row.getString("code")),
                word(SamplingMethod.class, row.getString("method")),
                word(Purpose.class, row.getString("purpose")),
                word(SampleRole.class, row.getString("role")),
                Optional.ofNullable(row.getString("collected_on")).map(LocalDate::parse),
                new Place(
                        Optional.ofNullable(row.getString("house")),
                        Optional.ofNullable(row.getString("bench")),
                        Optional.ofNullable(row.getString("crop_lot")),
                        Optional.ofNullable(row.getString("crop")),
                        Optional.ofNullable(row.getString("variety"))),
                row.getDouble("sampling_units"),
                readWash(row),
                readTimes(row),
                readReading(row),
                whole(row, "known"),
                Optional.ofNullable(row.getString("recount_of")).map(SampleCode::new),
                word(SampleState.class, row.getString("state")),
                AttributesJson.read(row.getString("attributes")));
    }

    private static Wash readWash(ResultSet row) throws SQLException {
        return new Wash(
                Optional.ofNullable(row.getString("fluid")).map(text -> word(Fluid.class, text)),
                Optional.ofNullable(row.getString("fill")).map(text -> word(Fill.class, text)),
                whole(row, "shake_seconds"),
                whole(row, "rinses"),
                Optional.ofNullable(row.getString("condition")));
    }

    private static Times readTimes(ResultSet row) throws SQLException {
        return new Times(
                instant(row, "cut_at"),
                instant(row, "washed_at"),
                instant(row, "freezer_in_at"),
                instant(row, "freezer_out_at"),
                instant(row, "read_at"));
    }

    private static Reading readReading(ResultSet row) throws SQLException {
        double minutes = row.getDouble("minutes");
        boolean noMinutes = row.wasNull();
        return new Reading(
                Optional.ofNullable(row.getString("reader")),
                row.getDouble("cells_read"),
                row.getDouble("cells_readable"),
                row.getInt("cells_obscured"),
                noMinutes ? OptionalDouble.empty() : OptionalDouble.of(minutes));
    }

    private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column)).map(Instant::parse);
    }

    private static OptionalInt whole(ResultSet row, String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(value);
    }

    private static @Nullable String text(Optional<Instant> instant) {
        return instant.map(Columns::written).orElse(null);
    }

    private static @Nullable Integer boxed(OptionalInt value) {
        return value.isPresent() ? (Integer) value.getAsInt() : null;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <E extends Enum<E>> E word(Class<E> type, String text) {
        return Enum.valueOf(type, text.toUpperCase(Locale.ROOT));
    }
}
