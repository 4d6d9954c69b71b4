package jarwise.usecase;

import jarwise.decision.Verdict;
import jarwise.stats.estimate.DensityEstimate;
import java.util.Map;
import java.util.Optional;

/**
 * The density of one group of a sheet.
 *
 * @param group value by name of each grouping column; empty without grouping
 * @param estimate density with its interval
 * @param verdict against the action threshold, where one was given
 */
public record GroupEstimate(
        Map<String, String> group, DensityEstimate estimate, Optional<Verdict> verdict) {}
