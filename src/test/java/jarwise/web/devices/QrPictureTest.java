package jarwise.web.devices;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class QrPictureTest {

    private static final int MODULE = 5;
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");

    @Test
    void aCameraReadsTheAddress() throws Exception {
        String address = "https://192.168.1.20:7443/";
        String svg = QrPicture.of(address, MODULE, "Square for a camera: " + address);

        assertThat(new QRCodeReader().decode(seen(svg)).getText()).isEqualTo(address);
        assertThat(svg).contains("aria-label=\"Square for a camera: " + address + "\"");
    }

    /** The dark squares of the picture, as a camera has them. */
    private static BinaryBitmap seen(String svg) {
        Matcher width = Pattern.compile(" width=\"(\\d+)\"").matcher(svg);
        assertThat(width.find()).isTrue();
        int side = Integer.parseInt(width.group(1));
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xffffff);
        Matcher run = RUN.matcher(svg);
        while (run.find()) {
            int left = (Integer.parseInt(run.group(1)) + 4) * MODULE;
            int top = (Integer.parseInt(run.group(2)) + 4) * MODULE;
            int right = left + Integer.parseInt(run.group(3)) * MODULE;
            for (int y = top; y < top + MODULE; y++) {
                Arrays.fill(pixels, y * side + left, y * side + right, 0);
            }
        }
        return new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
    }
}
