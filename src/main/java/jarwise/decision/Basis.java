package jarwise.decision;

import jarwise.sample.Fluid;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.KPrior;
import java.util.Set;

/**
 * What a density was worked out with.
 *
 * @param detection extraction efficiency and reader sensitivity, common to the group
 * @param prior what was known of k beforehand
 * @param historySamples samples of this site that the prior rests on; 0 for the standard one
 * @param fluids wash fluids of the samples
 * @param readers readers of the samples
 * @param efficiencyMeasured whether every fluid's extraction has been set for this stage
 * @param sensitivityMeasured whether every reader's sensitivity has been set for this stage
 */
public record Basis(
        Detection detection,
        KPrior prior,
        int historySamples,
        Set<Fluid> fluids,
        Set<String> readers,
        boolean efficiencyMeasured,
        boolean sensitivityMeasured) {

    public Basis {
        fluids = Set.copyOf(fluids);
        readers = Set.copyOf(readers);
    }
}
