/**
 * Poisson and negative binomial counts of one group of samples: probability and fit.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>What was counted?</td><td>{@link jarwise.stats.count.Observation}</td></tr>
 * <tr><td>How many are there, how clumped?</td><td>{@link jarwise.stats.count.CountFit}</td></tr>
 * <tr><td>How clumped in several groups together?</td>
 *     <td>{@link jarwise.stats.count.CommonKFit}</td></tr>
 * <tr><td>Which densities do the samples not contradict?</td>
 *     <td>{@link jarwise.stats.count.DensityProfile}</td></tr>
 * <tr><td>In what share of samples is there at least one?</td>
 *     <td>{@link jarwise.stats.count.ProportionPositive}</td></tr>
 * <tr><td>Between which means lies a count without clumping?</td>
 *     <td>{@link jarwise.stats.count.PoissonLimits}</td></tr>
 * <tr><td>What share of a known number is found again?</td>
 *     <td>{@link jarwise.stats.count.FoundShare}</td></tr>
 * <tr><td>Which k?</td><td>{@link jarwise.stats.count.KProfile}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.count;

import org.jspecify.annotations.NullMarked;
