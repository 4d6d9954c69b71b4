package jarwise.store;

import jarwise.sample.SampleCode;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.wire.DeedJson;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** One row of the event table, as texts and numbers. */
record EventRow(
        String nursery,
        String device,
        long sequence,
        String sample,
        String at,
        String person,
        @Nullable String batch,
        String deed) {

    static EventRow of(String nursery, SampleEvent event) {
        return new EventRow(
                nursery,
                event.id().device(),
                event.id().sequence(),
                event.sample().text(),
                Columns.written(event.at()),
                event.person(),
                event.batch().orElse(null),
                DeedJson.write(event.deed()));
    }

    static SampleEvent read(ResultSet row) throws SQLException {
        return new SampleEvent(
                new EventId(row.getString("device"), row.getLong("sequence")),
                new SampleCode(row.getString("sample")),
                Instant.parse(row.getString("at")),
                row.getString("person"),
                Optional.ofNullable(row.getString("batch")),
                DeedJson.read(row.getString("deed")));
    }

    PreparedBatch bind(PreparedBatch batch) {
        return batch.bind("nursery", nursery)
                .bind("device", device)
                .bind("sequence", sequence)
                .bind("sample", sample)
                .bind("at", at)
                .bind("person", person)
                .bind("batch", this.batch)
                .bind("deed", deed);
    }

    /** The text that the chain is worked out over: every part with its length before it. */
    String canonical() {
        return Stream.of(
                        nursery,
                        device,
                        Long.toString(sequence),
                        sample,
                        at,
                        person,
                        batch == null ? "" : batch,
                        deed)
                .map(part -> part.length() + ":" + part)
                .collect(Collectors.joining());
    }
}
