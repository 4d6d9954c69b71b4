package jarwise.render.scan;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import jarwise.base.InvalidInput;
import java.util.Map;
import java.util.Optional;

/**
 * Finds a QR code in a photo. The phone makes the photo small and grey and sends one byte a pixel,
 * so that no file of a picture is ever opened here.
 */
public final class PhotoCode {

    /** Longest side of a photo; a label's code is large enough in it. */
    public static final int LONGEST_SIDE = 1200;

    private static final int LONGEST_CODE = 60;

    private PhotoCode() {}

    /**
     * Reads the code.
     *
     * @param grey one byte a pixel, 0 black to 255 white, row by row
     * @param width pixels in a row
     * @return what the code says; empty where none was found
     * @throws InvalidInput if the bytes are no picture of this width
     */
    public static Optional<String> read(byte[] grey, int width) {
        int height = width > 0 ? grey.length / width : 0;
        boolean fits = width <= LONGEST_SIDE && height <= LONGEST_SIDE;
        if (height < 1 || !fits || width * height != grey.length) {
            throw new InvalidInput(
                    "The photo is %d bytes in rows of %d; it must be whole rows, %d at most."
                            .formatted(grey.length, width, LONGEST_SIDE));
        }
        PlanarYUVLuminanceSource source =
                new PlanarYUVLuminanceSource(grey, width, height, 0, 0, width, height, false);
        try {
            String code =
                    new QRCodeReader()
                            .decode(
                                    new BinaryBitmap(new HybridBinarizer(source)),
                                    Map.of(DecodeHintType.TRY_HARDER, true))
                            .getText();
            return Optional.of(code.strip()).filter(text -> text.length() <= LONGEST_CODE);
        } catch (ReaderException none) {
            return Optional.empty();
        }
    }
}
