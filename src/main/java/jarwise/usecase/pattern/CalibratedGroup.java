package jarwise.usecase.pattern;

import jarwise.stats.calibration.MethodRatio;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two methods against each other in one group of a sheet.
 *
 * @param group value by grouping column
 * @param ratio the ratio; empty if no bench and day has both methods with a find
 * @param samplesPerMethod samples of one method on one bench and day, on average
 * @param thresholdCount density by the first method that corresponds to the threshold
 * @param equivalentSamples samples of the first method that tell as much
 */
public record CalibratedGroup(
        Map<String, String> group,
        Optional<MethodRatio> ratio,
        double samplesPerMethod,
        OptionalDouble thresholdCount,
        OptionalDouble equivalentSamples) {}
