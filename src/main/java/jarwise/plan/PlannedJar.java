package jarwise.plan;

import jarwise.base.Require;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import java.util.Optional;

/**
 * One jar that a round will fill. A control (a blank wash, a spiked jar) is filled at the wash its
 * house and bench are empty texts and it holds no growing points.
 *
 * @param code on its labels
 * @param walk place in the walk, from 1
 * @param house greenhouse code
 * @param bench bench code
 * @param cropLot lot that stands there on that day
 * @param variety its cultivar
 * @param purpose whether it is to estimate or to find
 * @param role crop sample or check of the work
 * @param spot where on the bench; empty for targeted jars and controls
 * @param growingPoints growing points to cut into it, 1 or more; 0 in a control
 */
public record PlannedJar(
        SampleCode code,
        int walk,
        String house,
        String bench,
        Optional<String> cropLot,
        Optional<String> variety,
        Purpose purpose,
        SampleRole role,
        Optional<Spot> spot,
        int growingPoints) {

    public PlannedJar {
        Require.atLeast("place in the walk of " + code, walk, 1);
        Require.atLeast("growing points of " + code, growingPoints, isOfCrop(role) ? 1 : 0);
        if (isOfCrop(role)) {
            Require.notBlank("house of " + code, house);
            Require.notBlank("bench of " + code, bench);
        }
    }

    /** {@return whether it is cut from plants; false for a check of the work} */
    public boolean isOfCrop() {
        return isOfCrop(role);
    }

    private static boolean isOfCrop(SampleRole role) {
        return role == SampleRole.CROP;
    }
}
