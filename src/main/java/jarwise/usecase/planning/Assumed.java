package jarwise.usecase.planning;

import jarwise.stats.design.Workload;
import jarwise.stats.estimate.Detection;

/**
 * What a plan takes for granted.
 *
 * @param k dispersion of one jar; may be infinite
 * @param detection share of the animals on the plants that is counted
 * @param growingPoints growing points in one jar
 * @param workload minutes and freezer places of one jar
 */
public record Assumed(double k, Detection detection, int growingPoints, Workload workload) {

    /** {@return a density as it is counted} */
    double counted(double density) {
        return density * detection.mean();
    }
}
