package jarwise.render.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import jarwise.base.InvalidInput;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoCodeTest {

    @ParameterizedTest
    @ValueSource(ints = {120, 400, 900})
    void aCodeInDimLightIsReadAtAnySize(int side) throws WriterException {
        assertThat(PhotoCode.read(photo("7K4-M9QS", side, 60, 150), side)).contains("7K4-M9QS");
    }

    @Test
    void aPhotoWithoutACodeSaysSo() {
        byte[] noise = new byte[300 * 200];
        new Random(5).nextBytes(noise);

        assertThat(PhotoCode.read(noise, 300)).isEmpty();
        assertThat(PhotoCode.read(new byte[1], 1)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 7, 1201})
    void bytesThatAreNoPictureAreRefused(int width) {
        assertThatThrownBy(() -> PhotoCode.read(new byte[1201 * 2], width == 7 ? 11 : width))
                .isInstanceOf(InvalidInput.class);
    }

    /** A code in the middle of a grey picture with some noise. */
    private static byte[] photo(String code, int side, int dark, int light) throws WriterException {
        BitMatrix bits = new QRCodeWriter().encode(code, BarcodeFormat.QR_CODE, side / 2, side / 2);
        Random random = new Random(3);
        byte[] grey = new byte[side * side];
        for (int i = 0; i < grey.length; i++) {
            int x = i % side - side / 4;
            int y = i / side - side / 4;
            boolean inside = x >= 0 && y >= 0 && x < bits.getWidth() && y < bits.getHeight();
            int tone = inside && bits.get(x, y) ? dark : light;
            grey[i] = (byte) (tone + random.nextInt(21) - 10);
        }
        return grey;
    }
}
