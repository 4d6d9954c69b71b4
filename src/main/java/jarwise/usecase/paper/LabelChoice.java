package jarwise.usecase.paper;

import jarwise.base.InvalidInput;
import jarwise.render.label.LabelGeometry;
import jarwise.render.label.LabelJob;
import jarwise.site.Nursery;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The sheet of labels a site has in its printer, and how far the printer is off.
 *
 * @param sheet name of its geometry
 * @param across mm to the right, negative to the left; tenths count
 * @param down mm down, negative up; tenths count
 */
public record LabelChoice(String sheet, double across, double down) {

    /** Name of the setting that remembers it. */
    static final String SETTING = "label-sheet";

    public LabelChoice {
        LabelGeometry.named(sheet);
        across = tenth(across);
        down = tenth(down);
        if (Math.abs(across) >= LabelJob.MOST_NUDGE_MM
                || Math.abs(down) >= LabelJob.MOST_NUDGE_MM) {
            throw new InvalidInput(
                    "The nudge is %s mm across and %s mm down; both must be less than %.0f mm."
                            .formatted(across, down, LabelJob.MOST_NUDGE_MM));
        }
    }

    /** {@return the sheet that is most likely at hand: by the paper of the country} */
    static LabelChoice usual(Nursery nursery) {
        boolean america = nursery.zone().getId().startsWith("America/");
        return new LabelChoice(america ? "letter-30" : "a4-21", 0, 0);
    }

    /** {@return the choice as the text of a setting, such as "a4-21 0.5 -1.0"} */
    String text() {
        return "%s %s %s".formatted(sheet, across, down);
    }

    /** {@return the choice of a setting's text} */
    static LabelChoice of(String text) {
        String[] parts = text.split(" ", -1);
        return new LabelChoice(
                parts[0], Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
    }

    private static double tenth(double mm) {
        if (!Double.isFinite(mm)) {
            throw new InvalidInput("The nudge is %s mm; it must be a number.".formatted(mm));
        }
        return BigDecimal.valueOf(mm).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }
}
