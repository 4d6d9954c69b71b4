package jarwise.render.label;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts stickers on sheets so that those of one jar are peeled off together: all three in one row
 * where a row has three, or else lid and base in one row and the vouchers of two jars in the next.
 */
final class Places {

    private Places() {}

    /** A sticker and where it lies; cells are counted on over all sheets. */
    record Placed(JarLabel jar, Part part, int cell) {}

    static List<Placed> of(List<JarLabel> jars, LabelGeometry geometry, int start) {
        List<Placed> placed = new ArrayList<>();
        int next = start - 1;
        for (List<Placed> row : rows(jars, geometry.columns())) {
            int left = geometry.columns() - next % geometry.columns();
            next += left < row.size() ? left : 0;
            for (Placed one : row) {
                placed.add(new Placed(one.jar, one.part, next++));
            }
        }
        return placed;
    }

    /** What must not be torn apart; cells are not known yet. */
    private static List<List<Placed>> rows(List<JarLabel> jars, int columns) {
        List<List<Placed>> rows = new ArrayList<>();
        if (columns >= Part.values().length) {
            jars.forEach(jar -> rows.add(stickers(jar, Part.LID, Part.BASE, Part.VOUCHER)));
            return rows;
        }
        for (int i = 0; i < jars.size(); i += 2) {
            List<Placed> vouchers = new ArrayList<>();
            for (JarLabel jar : jars.subList(i, Math.min(i + 2, jars.size()))) {
                rows.add(stickers(jar, Part.LID, Part.BASE));
                vouchers.addAll(stickers(jar, Part.VOUCHER));
            }
            rows.add(vouchers);
        }
        return rows;
    }

    private static List<Placed> stickers(JarLabel jar, Part... parts) {
        List<Placed> stickers = new ArrayList<>();
        for (Part part : parts) {
            stickers.add(new Placed(jar, part, 0));
        }
        return stickers;
    }
}
