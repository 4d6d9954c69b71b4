package jarwise.usecase;

import jarwise.decision.Verdict;
import jarwise.decision.VerdictLimits;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.RowGroup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Estimates the density of each group of a sheet.
 *
 * @param estimator options of the estimate
 * @param limits how sure a verdict must be
 */
public record EstimateSheet(DensityEstimator estimator, VerdictLimits limits) {

    /**
     * Estimates.
     *
     * @param rows groups of counted rows
     * @return one estimate a group, in the same order
     */
    public List<GroupEstimate> run(GroupedRows rows) {
        return rows.groups().stream().map(this::estimated).toList();
    }

    private GroupEstimate estimated(RowGroup group) {
        DensityEstimate estimate = estimator.estimate(observations(group.rows()));
        Optional<Verdict> verdict =
                estimator.actionThreshold().isPresent()
                        ? Optional.of(verdict(estimate.probabilityAboveThreshold()))
                        : Optional.empty();
        return new GroupEstimate(group.values(), estimate, verdict);
    }

    private Verdict verdict(OptionalDouble probability) {
        return probability.isPresent()
                ? Verdict.of(probability.getAsDouble(), limits)
                : Verdict.CANNOT_TELL;
    }

    private static List<Observation> observations(List<CountRow> rows) {
        List<Observation> observations = new ArrayList<>();
        for (CountRow row : rows) {
            Observation observation =
                    new Observation(row.count().individuals(), row.units(), row.filterShare());
            observations.addAll(Collections.nCopies((int) row.frequency(), observation));
        }
        return observations;
    }
}
