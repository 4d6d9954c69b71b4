package jarwise.render.label;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Label sheets as they come out of a printer, read with a scanner. */
public final class PrintedLabels {

    private PrintedLabels() {}

    /**
     * {@return what the scanner reads on each label, sheet by sheet; labels left empty are not
     * there}
     */
    public static List<String> codes(byte[] pdf, LabelGeometry sheet) {
        List<String> codes = new ArrayList<>();
        try (PDDocument document = Sheets.read(pdf)) {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage printed = Sheets.printed(document, page);
                for (int cell = 0; cell < sheet.size(); cell++) {
                    String code = Sheets.decoded(printed, sheet.cell(cell));
                    if (!code.equals(Sheets.NO_CODE)) {
                        codes.add(code);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return codes;
    }
}
