package jarwise.stats.estimate;

import jarwise.numeric.BetaNodes;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * How much of what is on the plant is counted: extraction efficiency of the wash for this stage and
 * fluid, times sensitivity of the reader for this stage.
 *
 * @param efficiency share of the individuals present that extraction recovers
 * @param sensitivity share of the individuals on the filter that the reader finds
 */
public record Detection(DetectionShare efficiency, DetectionShare sensitivity) {

    /** {@return nothing is lost, or nothing is known and densities stay as counted} */
    public static Detection complete() {
        return new Detection(DetectionShare.known(1), DetectionShare.known(1));
    }

    /** {@return whether counted and corrected density are the same} */
    public boolean isComplete() {
        return equals(complete());
    }

    /** {@return the expected share of individuals that is counted, efficiency times sensitivity} */
    public double mean() {
        return efficiency.mean() * sensitivity.mean();
    }

    /** {@return the natural logarithm of {@link #mean}, also where that is below all numbers} */
    double logOfMean() {
        return Math.log(efficiency.mean()) + Math.log(sensitivity.mean());
    }

    /** {@return variance of the logarithm of the share counted; 0 where both are taken as known} */
    public double varianceOfLog() {
        return efficiency.varianceOfLog() + sensitivity.varianceOfLog();
    }

    /**
     * What a function of the share that is counted comes to on average, over what is open about
     * efficiency and sensitivity.
     *
     * @param ofShare the function, as in {@link DetectionShare#average}
     * @return its expected value
     */
    public double average(DoubleUnaryOperator ofShare) {
        return efficiency.average(e -> sensitivity.average(s -> ofShare.applyAsDouble(e * s)));
    }

    /** {@return logarithm of the product of the shares that are taken as known} */
    double logOfKnown() {
        return Stream.of(efficiency, sensitivity)
                .filter(DetectionShare.Known.class::isInstance)
                .mapToDouble(share -> Math.log(share.mean()))
                .sum();
    }

    /** {@return points to average over, for each share that was measured} */
    List<BetaNodes> uncertainShares(double finest) {
        return Stream.of(efficiency, sensitivity)
                .filter(DetectionShare.Measured.class::isInstance)
                .map(DetectionShare.Measured.class::cast)
                .map(share -> BetaNodes.of(share.foundShape(), share.missedShape(), finest))
                .toList();
    }
}
