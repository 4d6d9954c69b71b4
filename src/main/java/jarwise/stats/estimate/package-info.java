/**
 * Mean density per sampling unit with honest intervals, bounds on zero counts, probability above an
 * action threshold.
 *
 * <pre>
 *   DensityEstimate estimate =
 *           DensityEstimator.standard()
 *                   .withDetection(new Detection(measured(18, 24), known(1)))
 *                   .withActionThreshold(0.2)
 *                   .estimate(observations);
 *   estimate.estimate(); estimate.lower(); estimate.upper(); estimate.k(); estimate.warnings();
 * </pre>
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>How many are there, how sure is that?</td>
 *     <td>{@link jarwise.stats.estimate.DensityEstimator}</td></tr>
 * <tr><td>None found: what could still be there?</td>
 *     <td>{@link jarwise.stats.estimate.ZeroBound}</td></tr>
 * <tr><td>What is lost in washing and reading?</td>
 *     <td>{@link jarwise.stats.estimate.Detection}</td></tr>
 * <tr><td>"Cannot tell yet": how many more samples would?</td>
 *     <td>{@link jarwise.stats.estimate.SamplesThatWouldTell}</td></tr>
 * <tr><td>How clumped are they, before counting?</td>
 *     <td>{@link jarwise.stats.estimate.KPrior}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.estimate;

import org.jspecify.annotations.NullMarked;
