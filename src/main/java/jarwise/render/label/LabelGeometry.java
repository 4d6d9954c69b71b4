package jarwise.render.label;

import jarwise.base.InvalidInput;
import jarwise.render.report.Paper;
import java.util.List;

/**
 * How labels lie on a sheet; it is known by its geometry and by nothing else.
 *
 * @param name paper and number of labels, such as a4-21
 * @param paper the sheet
 * @param columns labels side by side
 * @param rows labels one below the other
 * @param first the upper left label, mm
 * @param stepAcross from one left edge to the next, mm
 * @param stepDown from one upper edge to the next, mm
 */
public record LabelGeometry(
        String name,
        Paper paper,
        int columns,
        int rows,
        Box first,
        double stepAcross,
        double stepDown) {

    private static final List<LabelGeometry> SHIPPED = Geometries.read();

    /** {@return the sheets that are shipped} */
    public static List<LabelGeometry> all() {
        return SHIPPED;
    }

    /**
     * Looks a sheet up.
     *
     * @param name such as a4-21
     * @return the sheet
     * @throws InvalidInput if there is none, naming those that there are
     */
    public static LabelGeometry named(String name) {
        return SHIPPED.stream()
                .filter(geometry -> geometry.name.equals(name))
                .findAny()
                .orElseThrow(
                        () ->
                                new InvalidInput(
                                        "There is no label sheet '%s'; there are %s."
                                                .formatted(
                                                        name,
                                                        String.join(
                                                                ", ",
                                                                SHIPPED.stream()
                                                                        .map(LabelGeometry::name)
                                                                        .toList()))));
    }

    /** {@return labels on a sheet} */
    public int size() {
        return columns * rows;
    }

    /**
     * Places one label.
     *
     * @param index 0 for the upper left one, then along the rows
     * @return where it lies, mm
     */
    public Box cell(int index) {
        int row = index / columns;
        int column = index % columns;
        return first.moved(column * stepAcross, row * stepDown);
    }
}
