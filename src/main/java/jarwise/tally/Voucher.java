package jarwise.tally;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A find that was kept, with the photos taken of it.
 *
 * @param number on the filter, from 1
 * @param filterCell where it lay
 * @param find what it was counted as; empty where that count was taken back
 * @param photos hashes of its photos, in the order in which they were taken
 */
public record Voucher(
        int number, String filterCell, Optional<Deed.Counted> find, List<String> photos) {

    /** {@return the finds of a sample that were kept, by their number} */
    public static List<Voucher> of(SampleFold fold) {
        Map<EventId, Deed> standing =
                fold.standing().stream()
                        .collect(Collectors.toMap(SampleEvent::id, SampleEvent::deed));
        return fold.standing().stream()
                .filter(event -> event.deed() instanceof Deed.VoucherKept)
                .map(event -> of(event.id(), (Deed.VoucherKept) event.deed(), standing))
                .sorted(Comparator.comparingInt(Voucher::number))
                .toList();
    }

    private static Voucher of(EventId id, Deed.VoucherKept kept, Map<EventId, Deed> standing) {
        List<String> photos =
                standing.entrySet().stream()
                        .filter(one -> one.getValue() instanceof Deed.PhotoTaken)
                        .sorted(Map.Entry.comparingByKey())
                        .map(one -> (Deed.PhotoTaken) one.getValue())
                        .filter(photo -> photo.voucher().equals(id))
                        .map(Deed.PhotoTaken::sha256)
                        .distinct()
                        .toList();
        Optional<Deed.Counted> find =
                kept.press()
                        .flatMap(press -> Optional.ofNullable(standing.get(press)))
                        .filter(Deed.Counted.class::isInstance)
                        .map(Deed.Counted.class::cast);
        return new Voucher(kept.number(), kept.filterCell(), find, photos);
    }
}
