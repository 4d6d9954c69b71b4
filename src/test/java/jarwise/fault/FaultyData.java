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

    /** {@return what a scout reads of a fault} */
    static String told(InvalidInput fault) {
        return fault instanceof Refused refused
                ? Words.of(Language.ENGLISH).say(refused.reason())
                : String.valueOf(fault.getMessage());
    }
}
