package jarwise.web.walk;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A photo of a label's code, as a phone takes it. */
final class CodePhoto {

    private CodePhoto() {}

    static byte[] png(String code) {
        try {
            BitMatrix bits = new QRCodeWriter().encode(code, BarcodeFormat.QR_CODE, 900, 900);
            BufferedImage photo = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
            for (int x = 0; x < photo.getWidth(); x++) {
                for (int y = 0; y < photo.getHeight(); y++) {
                    int column = x - 350;
                    int row = y - 150;
                    boolean inside = column >= 0 && row >= 0 && column < 900 && row < 900;
                    photo.setRGB(x, y, inside && bits.get(column, row) ? 0x332211 : 0xd8d4c0);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(photo, "png", out);
            return out.toByteArray();
        } catch (WriterException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
