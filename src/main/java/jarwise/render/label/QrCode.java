package jarwise.render.label;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A text as a QR code of error correction level Q, of which a quarter may be soiled. A label's code
 * takes version 1: 21 modules a side, with four light ones around it 29.
 */
public final class QrCode {

    /** Light modules that a QR code needs on each side. */
    public static final int QUIET = 4;

    private final ByteMatrix modules;

    private QrCode(ByteMatrix modules) {
        this.modules = modules;
    }

    /**
     * Makes the QR code of a text.
     *
     * @param text a sample's code and nothing else
     * @return its modules, in the smallest version that holds it
     */
    public static QrCode of(String text) {
        try {
            Map<EncodeHintType, ?> hints = Map.of(EncodeHintType.CHARACTER_SET, "UTF-8");
            return new QrCode(Encoder.encode(text, ErrorCorrectionLevel.Q, hints).getMatrix());
        } catch (WriterException e) {
            throw new InvalidInput("The code '%s' does not fit into a QR code.".formatted(text));
        }
    }

    /** {@return modules a side, without the light ones around} */
    public int size() {
        return modules.getWidth();
    }

    /** A run of dark modules in a row. */
    private record Run(int x, int y, int length) {}

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (int y = 0; y < size(); y++) {
            int from = 0;
            for (int x = 0; x <= size(); x++) {
                if (x == size() || modules.get(x, y) == 0) {
                    if (x > from) {
                        runs.add(new Run(from, y, x - from));
                    }
                    from = x + 1;
                }
            }
        }
        return runs;
    }

    /** {@return all dark modules as the data of one SVG path, one unit a module} */
    public String svgPath() {
        StringBuilder path = new StringBuilder();
        for (Run run : runs()) {
            path.append("M%d %dh%dv1h-%dz".formatted(run.x, run.y, run.length, run.length));
        }
        return path.toString();
    }

    /** {@return all dark modules, with the first light one around at {@code x}, {@code y}} */
    List<Box> boxes(double x, double y, double module) {
        double left = x + QUIET * module;
        double top = y + QUIET * module;
        return runs().stream()
                .map(
                        run ->
                                new Box(
                                        left + run.x * module,
                                        top + run.y * module,
                                        run.length * module,
                                        module))
                .toList();
    }
}
