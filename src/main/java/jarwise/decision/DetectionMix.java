package jarwise.decision;

import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Samples of one group that were washed in different fluids or read by different people, made ready
 * for an estimate that knows one extraction efficiency and one reader sensitivity: each sample's
 * exposure is scaled by its own share over the common one, and the common one is as uncertain as
 * the mix of those that went into it. See docs/methods.md, "mixed readers and fluids".
 *
 * @param observations the samples, scaled where shares differ
 * @param detection the common shares
 */
public record DetectionMix(List<Observation> observations, Detection detection) {

    public DetectionMix {
        observations = List.copyOf(observations);
    }

    /**
     * One sample with what was lost on its way.
     *
     * @param observation the sample as counted
     * @param efficiency share that its fluid brings off the plant
     * @param sensitivity share that its reader finds
     */
    public record Part(
            Observation observation, DetectionShare efficiency, DetectionShare sensitivity) {

        double weight() {
            return observation.exposure() * efficiency.mean() * sensitivity.mean();
        }
    }

    /**
     * Finds the common shares and scales the samples to them.
     *
     * @param parts the samples of one group, at least one
     * @return observations and shares for {@code DensityEstimator}
     */
    public static DetectionMix of(List<Part> parts) {
        if (parts.isEmpty()) {
            throw new InvalidInput("There is no sample to estimate from; at least 1 is needed.");
        }
        DetectionShare efficiency = common(parts, Part::efficiency);
        DetectionShare sensitivity = common(parts, Part::sensitivity);
        return new DetectionMix(
                parts.stream().map(part -> scaled(part, efficiency, sensitivity)).toList(),
                new Detection(efficiency, sensitivity));
    }

    private static Observation scaled(
            Part part, DetectionShare efficiency, DetectionShare sensitivity) {
        Observation seen = part.observation();
        double factor =
                ratio(part.efficiency(), efficiency) * ratio(part.sensitivity(), sensitivity);
        return factor == 1
                ? seen
                : new Observation(
                        seen.individuals(), seen.samplingUnits() * factor, seen.filterShare());
    }

    private static double ratio(DetectionShare own, DetectionShare common) {
        return own.equals(common) ? 1 : own.mean() / common.mean();
    }

    private static DetectionShare common(List<Part> parts, Function<Part, DetectionShare> shareOf) {
        Map<DetectionShare, Double> weights = new HashMap<>();
        double total = 0;
        for (Part part : parts) {
            weights.merge(shareOf.apply(part), part.weight(), Double::sum);
            total += part.weight();
        }
        return weights.size() == 1 ? shareOf.apply(parts.get(0)) : pooled(weights, total);
    }

    /**
     * The exposure-weighted mean share. Errors of different people's (and fluids') measurements are
     * independent, so the relative variance of the mix is the sum of their relative variances times
     * the squares of their weights; a measurement on so many known individuals has that variance.
     */
    private static DetectionShare pooled(Map<DetectionShare, Double> weights, double total) {
        double reciprocal = 0;
        double variance = 0;
        for (Map.Entry<DetectionShare, Double> entry : weights.entrySet()) {
            double weight = entry.getValue() / total;
            reciprocal += weight / entry.getKey().mean();
            variance += weight * weight * entry.getKey().varianceOfLog();
        }
        double mean = 1 / reciprocal;
        if (variance == 0 || mean >= 1) {
            return DetectionShare.known(Math.min(1, mean));
        }
        long known = Math.max(1, Math.round((1 - mean) / (mean * variance)));
        return DetectionShare.measured(Math.round(mean * known), known);
    }
}
