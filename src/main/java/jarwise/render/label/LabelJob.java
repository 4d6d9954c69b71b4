package jarwise.render.label;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.render.words.Words;
import java.util.List;

/**
 * How labels are printed.
 *
 * @param geometry the sheet
 * @param across everything moved to the right by so many mm, negative to the left; at most 10
 * @param down everything moved down by so many mm, negative up; at most 10
 * @param start the first label that is still on the sheet, 1 for the upper left one
 * @param words language
 * @param head what stands in the upper margin: round and day
 * @param cautions what stands in the lower margin
 */
public record LabelJob(
        LabelGeometry geometry,
        double across,
        double down,
        int start,
        Words words,
        String head,
        List<String> cautions) {

    /** Farther than any printer is off. */
    public static final double MOST_NUDGE_MM = 10;

    public LabelJob {
        Require.between("nudge across", across, -MOST_NUDGE_MM, MOST_NUDGE_MM);
        Require.between("nudge down", down, -MOST_NUDGE_MM, MOST_NUDGE_MM);
        if (start < 1 || start > geometry.size()) {
            throw new InvalidInput(
                    "The first label is number %d; the sheet %s has 1 to %d."
                            .formatted(start, geometry.name(), geometry.size()));
        }
        cautions = List.copyOf(cautions);
    }

    /** {@return where a label lies on paper, the nudge counted in} */
    Box cell(int index) {
        return geometry.cell(index).moved(across, down);
    }
}
