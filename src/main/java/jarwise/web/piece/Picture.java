package jarwise.web.piece;

import java.util.List;

/**
 * Pictures in the order they stand in, each for the desk and for the phone, as SVG of our own
 * writer.
 *
 * @param panels at least one
 */
public record Picture(List<Panel> panels) {

    public Picture {
        panels = List.copyOf(panels);
    }

    /**
     * One picture in both widths.
     *
     * @param desk for 1,040 px
     * @param phone for 328 px
     */
    public record Panel(String desk, String phone) {}
}
