package jarwise.usecase.devices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class LetInCodesTest {

    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");

    private final LetInCodes codes = new LetInCodes();

    private void isRefused(String typed, String from, Instant at, String why) {
        assertThatThrownBy(() -> codes.take(typed, from, at))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.reason().key()).isEqualTo(why));
    }

    @Test
    void aCodeLetsOneDeviceInAndNoSecond() {
        LetInCode code = codes.show("quillback", "SC-1", NOW);

        assertThat(codes.take(code.shown(), "a", NOW)).isEqualTo(code);
        isRefused(code.shown(), "a", NOW, "devices.code.wrong");
        assertThat(codes.shownNow("quillback", NOW)).isEmpty();
    }

    @Test
    void aCodeIsTakenHoweverItIsTyped() {
        LetInCode code = codes.show("quillback", "", NOW);
        String lookAlikes = code.shown().replace('0', 'o').replace('1', 'l').replace("-", " ");

        assertThat(codes.take(" " + lookAlikes.toLowerCase(Locale.ROOT), "a", NOW)).isEqualTo(code);
    }

    @Test
    void aCodeRunsOutAfterTenMinutes() {
        LetInCode first = codes.show("quillback", "", NOW);
        Instant late = NOW.plus(Duration.ofMinutes(10));
        isRefused(first.shown(), "a", late, "devices.code.over");

        LetInCode second = codes.show("quillback", "", NOW);
        assertThat(codes.take(second.shown(), "a", late.minusNanos(1))).isEqualTo(second);
    }

    @Test
    void aNewCodeMakesTheOneBeforeVoidButNotThatOfAnotherNursery() {
        LetInCode first = codes.show("quillback", "", NOW);
        LetInCode other = codes.show("larch-row", "", NOW);
        LetInCode second = codes.show("quillback", "", NOW);

        isRefused(first.shown(), "a", NOW, "devices.code.wrong");
        assertThat(codes.take(second.shown(), "a", NOW).nursery()).isEqualTo("quillback");
        assertThat(codes.take(other.shown(), "a", NOW).nursery()).isEqualTo("larch-row");
    }

    @Test
    void afterFiveWrongTriesADeviceWaitsTenMinutesAndOthersDoNot() {
        LetInCode code = codes.show("quillback", "", NOW);
        for (int i = 0; i < 5; i++) {
            isRefused("0000-0000", "a", NOW, "devices.code.wrong");
        }
        isRefused(code.shown(), "a", NOW, "devices.code.tries");
        isRefused(code.shown(), "a", NOW.plusSeconds(599), "devices.code.tries");
        isRefused("0000-0000", "b", NOW.plusSeconds(599), "devices.code.wrong");
        LetInCode later = codes.show("quillback", "", NOW.plusSeconds(600));
        assertThat(codes.take(later.shown(), "a", NOW.plusSeconds(600))).isEqualTo(later);
    }

    @Test
    void manyDevicesTogetherGetThirtyTries() {
        LetInCode code = codes.show("quillback", "", NOW);
        for (int i = 0; i < 30; i++) {
            isRefused("0000-0000", "device " + i, NOW, "devices.code.wrong");
        }
        isRefused(code.shown(), "one more", NOW, "devices.code.tries");
    }

    @Test
    void codesDiffer() {
        assertThat(codes.show("quillback", "", NOW).symbols())
                .matches("[0-9A-HJKMNP-TV-Z]{8}")
                .isNotEqualTo(codes.show("quillback", "", NOW).symbols());
    }
}
