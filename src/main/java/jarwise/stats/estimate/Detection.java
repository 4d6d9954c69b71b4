package jarwise.stats.estimate;

import jarwise.numeric.BetaAverage;
import jarwise.numeric.BetaNodes;
import jarwise.numeric.PanelFunction;
import jarwise.numeric.PeakPanels;
import java.util.Comparator;
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

    /** A function this much narrower than a share's distribution is not met by even points. */
    private static final double NARROW = 0.25;

    /** In tails beyond this one features are narrower than the middle lets see. */
    private static final double FAR_TAIL = 1e-4;

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
        return DetectionShare.averaged(
                tail ->
                        average(
                                uncertainShares(DetectionShare.Measured.FINEST, tail),
                                logOfKnown(),
                                ofShare));
    }

    private static double average(
            List<BetaNodes> shares, double logShare, DoubleUnaryOperator ofShare) {
        if (shares.isEmpty()) {
            return ofShare.applyAsDouble(Math.exp(logShare));
        }
        List<BetaNodes> others = shares.subList(1, shares.size());
        return shares.get(0).average(v -> average(others, logShare + v, ofShare));
    }

    /** {@return logarithm of the product of the shares that are taken as known} */
    double logOfKnown() {
        return Stream.of(efficiency, sensitivity)
                .filter(DetectionShare.Known.class::isInstance)
                .mapToDouble(share -> Math.log(share.mean()))
                .sum();
    }

    /** {@return the shares that were measured, the better known first} */
    List<DetectionShare.Measured> measured() {
        return Stream.of(efficiency, sensitivity)
                .filter(DetectionShare.Measured.class::isInstance)
                .map(DetectionShare.Measured.class::cast)
                .sorted(Comparator.comparingDouble(DetectionShare::varianceOfLog))
                .toList();
    }

    /** {@return points to average over, for each share that was measured} */
    List<BetaNodes> uncertainShares(double finest, double tail) {
        return measured().stream()
                .map(share -> BetaNodes.of(share.foundShape(), share.missedShape(), finest, tail))
                .toList();
    }

    /**
     * Makes a function of the counted ln density one of the corrected ln density: averages over
     * each measured share in turn.
     *
     * @param counted function of the counted ln density, on panels
     * @param tilt power of the share that the function is multiplied by
     * @param finest standard deviation of the function's narrowest feature
     * @param end the function is cut off there
     * @param tail smallest share that a quantile is wanted for
     */
    PanelFunction averaged(
            PanelFunction counted, double tilt, double finest, double end, double tail) {
        PanelFunction result = counted;
        double centre = counted.inverseIntegral(0.5 * counted.integral());
        double variance = finest * finest;
        for (DetectionShare.Measured share : measured()) {
            centre -= share.meanOfLog();
            variance += share.varianceOfLog();
            DoubleUnaryOperator average = average(result, share, tilt, finest, tail);
            result =
                    PeakPanels.of(
                            t -> Math.log(Math.max(0, average.applyAsDouble(t))),
                            Math.min(end, centre),
                            Math.sqrt(variance),
                            end,
                            tail);
        }
        return result;
    }

    private static DoubleUnaryOperator average(
            PanelFunction counted,
            DetectionShare.Measured share,
            double tilt,
            double finest,
            double tail) {
        double a = share.foundShape();
        double b = share.missedShape();
        if (tail < FAR_TAIL || finest < NARROW * Math.sqrt(share.varianceOfLog())) {
            return new BetaAverage(counted, a, b, tilt, tail)::value;
        }
        BetaNodes nodes = BetaNodes.of(a, b, finest, 1);
        return t -> nodes.average(v -> Math.exp(tilt * v) * Math.max(0, counted.value(t + v)));
    }
}
