package jarwise.usecase.planning;

import jarwise.decision.Finding.Subject;
import jarwise.stats.detect.ClumpedDetection;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What tapping and looking see of thrips, to hold beside a wash.
 *
 * <p><b>Source.</b> Lettuce, whole-plant wash against beat pan and visual search (Palumbo): about
 * 30 % of the adults either way, 18 to 20 % of the larvae by beating, under 10 % by looking. The
 * clumping at one growing point is that of the demo nursery, not measured. No figure for other
 * animals is known to us, and none is made up.
 */
final class WaysOfLooking {

    /** Taps, or plants looked at, that stand beside a round of jars. */
    static final int NUMBER = 20;

    static final String TAP = "tap";
    static final String LOOK = "look";

    private static final String THRIPS = "FRANOC";
    private static final Map<String, Double> TAPPED = Map.of("larva", 0.19, "adult", 0.30);
    private static final Map<String, Double> LOOKED_AT = Map.of("larva", 0.10, "adult", 0.30);
    private static final Map<String, Double> CLUMPING = Map.of("larva", 0.4, "adult", 0.9);

    private WaysOfLooking() {}

    /** {@return the chance that 20 taps, or looks, find at least one; empty for other animals} */
    static OptionalDouble chance(String way, Subject subject, double density) {
        Map<String, Double> shares = way.equals(TAP) ? TAPPED : LOOKED_AT;
        Optional<Double> share = Optional.ofNullable(shares.get(subject.stageGroup()));
        if (!subject.pest().equals(THRIPS) || share.isEmpty()) {
            return OptionalDouble.empty();
        }
        Detection seen = new Detection(DetectionShare.known(share.get()), DetectionShare.known(1));
        double k = CLUMPING.getOrDefault(subject.stageGroup(), 1.0);
        return OptionalDouble.of(new ClumpedDetection(density, 1, k, seen).probability(NUMBER));
    }
}
