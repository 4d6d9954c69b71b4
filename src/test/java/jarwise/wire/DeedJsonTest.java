package jarwise.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Events;
import jarwise.tally.SampleEvent;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Deeds as they travel: nothing is lost, and what makes no sense is refused with its word. */
class DeedJsonTest {

    private static final String HASH = "0123456789abcdef".repeat(4);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyKindOfDeedComesBackAsItWasWritten(long seed) {
        for (SampleEvent event : Events.random(new Random(seed))) {
            String text = DeedJson.write(event.deed());

            assertThat(DeedJson.read(text)).isEqualTo(event.deed());
            assertThat(DeedJson.write(DeedJson.read(text))).isEqualTo(text);
        }
    }

    @Test
    void aFilterInWhichNothingWasLookedForHasAnEmptyList() {
        String text = DeedJson.write(new Deed.FilterDone(Set.of()));

        assertThat(text).isEqualTo("{\"deed\":\"filter_done\",\"pests\":[]}");
        assertThat(DeedJson.read(text)).isEqualTo(new Deed.FilterDone(Set.of()));
    }

    @Test
    void aKeptFindIsWrittenAsDevicesWriteIt() {
        Deed loose = new Deed.VoucherKept("D5", 2, Optional.empty());
        Deed kept = new Deed.VoucherKept("D5", 1, Optional.of(new EventId("phone-1", 7)));

        assertThat(DeedJson.write(loose))
                .isEqualTo("{\"deed\":\"voucher_kept\",\"filter_cell\":\"D5\",\"number\":2}");
        assertThat(DeedJson.write(kept))
                .endsWith("\"number\":1,\"press\":{\"device\":\"phone-1\",\"sequence\":7}}");
    }

    @Test
    void aPhotoIsWrittenAsDevicesWriteIt() {
        Deed photo = new Deed.PhotoTaken(new EventId("phone-1", 8), HASH, 81_234);

        assertThat(DeedJson.write(photo))
                .isEqualTo(
                        "{\"deed\":\"photo_taken\",\"voucher\":{\"device\":\"phone-1\",\"sequence\":8},"
                            + "\"sha256\":\"%s\",\"bytes\":81234}",
                        HASH);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{'deed':'voucher_kept','number':1}; filter_cell",
                "{'deed':'voucher_kept','filter_cell':' ','number':1}; filter_cell",
                "{'deed':'voucher_kept','filter_cell':'D5'}; number",
                "{'deed':'voucher_kept','filter_cell':'D5','number':0}; number",
                "{'deed':'voucher_kept','filter_cell':'D5','number':1,'press':7}; device",
                "{'deed':'photo_taken','sha256':'HASH','bytes':9}; device",
                "{'deed':'photo_taken','voucher':{'device':'p'},'sha256':'HASH','bytes':9};"
                        + " sequence",
                "{'deed':'photo_taken','voucher':{'device':'p','sequence':1},'bytes':9}; sha256",
                "{'deed':'photo_taken','voucher':{'device':'p','sequence':1},'sha256':'HASH0',"
                        + "'bytes':9}; sha256",
                "{'deed':'photo_taken','voucher':{'device':'p','sequence':1},'sha256':'HASH'};"
                        + " bytes"
            })
    void whatMakesNoSenseIsRefusedWithItsWord(String text, String word) {
        assertThatThrownBy(() -> DeedJson.read(text.replace('\'', '"').replace("HASH", HASH)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(word);
    }
}
