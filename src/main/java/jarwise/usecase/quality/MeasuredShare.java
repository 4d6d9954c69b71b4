package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.sample.DetectionValue;
import jarwise.stats.estimate.DetectionShare;
import jarwise.usecase.form.Fields;
import java.time.YearMonth;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A share as this site has measured it: what a reader finds of what is on the filter, or what a
 * fluid brings off the plant.
 *
 * @param kind of what
 * @param whose reader, or fluid as forms write it
 * @param subject pest and stages
 * @param finds readings of known numbers, all together; empty where only washes again tell
 * @param washSeries jars that were washed again
 * @param estimate the share with its limits
 * @param readersApart whether what readers overlook is kept apart from it: false for a wash that
 *     was counted by somebody whose own share nobody has measured
 * @param months readings of known numbers, month by month
 * @param readingsNeeded readings in all that would tell, where these do not; empty where they do,
 *     and where no number that anybody would read does
 * @param inUse the value that corrects densities now
 */
public record MeasuredShare(
        DetectionValue.Kind kind,
        String whose,
        Subject subject,
        Optional<KnownFinds> finds,
        int washSeries,
        Estimate estimate,
        boolean readersApart,
        SortedMap<YearMonth, KnownFinds> months,
        OptionalInt readingsNeeded,
        Optional<DetectionValue> inUse) {

    public MeasuredShare {
        months = Collections.unmodifiableSortedMap(new TreeMap<>(months));
    }

    /**
     * A share with its limits.
     *
     * @param share expected share
     * @param lower lower limit, 95 %
     * @param upper upper limit, 95 %
     * @param adopted as a density takes it: found of known
     * @param tells whether there are enough readings and near enough limits to go by it
     */
    public record Estimate(
            double share,
            double lower,
            double upper,
            DetectionShare.Measured adopted,
            boolean tells) {}

    /** {@return a name that is its own on the page and in forms: "reader/SC-2/FRANOC/larva"} */
    public String key() {
        return String.join("/", Fields.wordOf(kind), whose, subject.pest(), subject.stageGroup());
    }
}
