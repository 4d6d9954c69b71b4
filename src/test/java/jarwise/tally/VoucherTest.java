package jarwise.tally;

import static jarwise.tally.Events.event;
import static jarwise.tally.Events.step;
import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VoucherTest {

    private static final String ONE = "1".repeat(64);
    private static final String TWO = "2".repeat(64);

    private static final Deed.Counted ADULT =
            new Deed.Counted("FRANOC", "adult", 1, Optional.of("A3"));

    @Test
    void aFindHasTheCountItBelongsToAndItsOwnPhotosInTheirOrder() {
        SampleEvent counted = event("phone", 2, ADULT);
        SampleEvent kept = event("phone", 3, kept(1, counted));
        SampleEvent other = event("phone", 4, kept(2, counted));

        assertThat(
                        vouchers(
                                counted,
                                kept,
                                other,
                                event("phone", 6, photo(kept, TWO)),
                                event("phone", 5, photo(kept, ONE)),
                                event("phone", 7, photo(kept, ONE))))
                .containsExactly(
                        new Voucher(1, "A3", Optional.of(ADULT), List.of(ONE, TWO)),
                        new Voucher(2, "A3", Optional.of(ADULT), List.of()));
    }

    @Test
    void whatWasTakenBackIsNotThere() {
        SampleEvent counted = event("phone", 2, ADULT);
        SampleEvent kept = event("phone", 3, kept(1, counted));
        SampleEvent photo = event("phone", 4, photo(kept, ONE));

        assertThat(vouchers(counted, kept, photo, voided(5, counted)))
                .containsExactly(new Voucher(1, "A3", Optional.empty(), List.of(ONE)));
        assertThat(vouchers(counted, kept, photo, voided(5, photo)))
                .containsExactly(new Voucher(1, "A3", Optional.of(ADULT), List.of()));
        assertThat(vouchers(counted, kept, photo, voided(5, kept))).isEmpty();
    }

    private static Deed kept(int number, SampleEvent press) {
        return new Deed.VoucherKept("A3", number, Optional.of(press.id()));
    }

    private static Deed photo(SampleEvent voucher, String hash) {
        return new Deed.PhotoTaken(voucher.id(), hash, 1000);
    }

    private static SampleEvent voided(long sequence, SampleEvent slip) {
        return event("phone", sequence, new Deed.Voided(slip.id(), "undo"));
    }

    private static List<Voucher> vouchers(SampleEvent... events) {
        List<SampleEvent> all = new ArrayList<>(List.of(events));
        all.add(step("phone", 1, Step.CUT, Map.of()));
        return Voucher.of(SampleFold.of(Events.JAR, all, Events.STAGES));
    }
}
