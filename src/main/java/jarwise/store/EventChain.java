package jarwise.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.OptionalLong;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterator;

/**
 * The chain of hashes over the event log: each link is the SHA-256 of the link before it and of the
 * event. An event changed, taken out or put in between breaks every link after it.
 *
 * @param position place of the last event, from 1; 0 before the first
 * @param hash its link, as lower-case hexadecimal
 */
record EventChain(long position, String hash) {

    private static final EventChain START = new EventChain(0, "");

    static EventChain last(Handle handle) {
        return handle.createQuery(
                        "select position, chain from event order by position desc limit 1")
                .map((row, context) -> new EventChain(row.getLong(1), row.getString(2)))
                .findOne()
                .orElse(START);
    }

    EventChain next(EventRow row) {
        String text = hash + "\n" + (position + 1) + "\n" + row.canonical();
        return new EventChain(position + 1, sha256(text));
    }

    static OptionalLong firstBrokenLink(Handle handle) {
        EventChain chain = START;
        try (ResultIterator<Link> links = links(handle)) {
            for (Iterator<Link> rest = links; rest.hasNext(); ) {
                Link link = rest.next();
                EventChain expected = chain.next(link.row());
                if (!expected.equals(link.stored())) {
                    return OptionalLong.of(link.stored().position());
                }
                chain = expected;
            }
        }
        return OptionalLong.empty();
    }

    private record Link(EventChain stored, EventRow row) {

        static Link read(ResultSet row) throws SQLException {
            return new Link(
                    new EventChain(row.getLong("position"), row.getString("chain")),
                    new EventRow(
                            row.getString("nursery"),
                            row.getString("device"),
                            row.getLong("sequence"),
                            row.getString("sample"),
                            row.getString("at"),
                            row.getString("person"),
                            row.getString("batch"),
                            row.getString("deed")));
        }
    }

    private static ResultIterator<Link> links(Handle handle) {
        return handle.createQuery("select * from event order by position")
                .setFetchSize(10_000)
                .map((row, context) -> Link.read(row))
                .iterator();
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(
                            MessageDigest.getInstance("SHA-256")
                                    .digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
