package jarwise.decision;

import jarwise.base.Require;
import java.time.LocalDate;

/**
 * The density at which this site means to act: its own, dated, with reason and source. A later one
 * for the same pest and stages takes over from its day; earlier ones are kept.
 *
 * @param pest pest code
 * @param stageGroup stages that are added up, such as {@code larva}
 * @param density individuals per sampling unit; above 0
 * @param setOn first day it holds
 * @param setBy role code
 * @param reason why this value
 * @param source where it comes from
 */
public record ActionThreshold(
        String pest,
        String stageGroup,
        double density,
        LocalDate setOn,
        String setBy,
        String reason,
        String source) {

    public ActionThreshold {
        Require.positive("action threshold", density);
        Require.notBlank("reason", reason);
    }
}
