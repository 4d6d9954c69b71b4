package jarwise.fault;

import jarwise.base.InvalidInput;
import jarwise.base.Refused;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.Events;
import jarwise.tally.SampleEvent;
import jarwise.wire.pest.ShippedPests;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Supplier;

/** Data to which faults are done. */
final class FaultyData {

    static final String NURSERY = "lane";

    private FaultyData() {}

    /** Makes a nursery in which thrips can be counted. */
    static void prepare(Database database) {
        new SiteStore(database).save(new Nursery(NURSERY, "Lane", ZoneOffset.UTC, "en"));
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
    }

    /** {@return one adult thrips seen, the {@code sequence}th press of the tablet} */
    static SampleEvent press(long sequence) {
        return Events.event(
                "tablet", sequence, new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1")));
    }

    /** Works on a file that cannot grow. The limit belongs to the connection of one transaction. */
    static <T> T withoutRoom(Database database, Supplier<T> work) {
        return database.write(
                handle -> {
                    long pages = handle.createQuery("pragma page_count").mapTo(Long.class).one();
                    long most = Long.MAX_VALUE >> 33;
                    handle.createQuery("pragma max_page_count = " + pages).mapTo(Long.class).one();
                    try {
                        return work.get();
                    } finally {
                        handle.createQuery("pragma max_page_count = " + most)
                                .mapTo(Long.class)
                                .one();
                    }
                });
    }

    /** {@return what a scout reads of a fault} */
    static String told(InvalidInput fault) {
        return fault instanceof Refused refused
                ? Words.of(Language.ENGLISH).say(refused.reason())
                : String.valueOf(fault.getMessage());
    }
}
