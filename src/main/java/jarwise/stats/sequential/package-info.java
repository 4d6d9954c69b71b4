/**
 * Sampling that stops as soon as it knows enough: stop lines, how often they are right, how many
 * samples they take.
 *
 * <pre>
 *   WaldDesign design = new WaldDesign(new CountedSamples(0.8), 1, 2, 0.1, 0.1, 1);
 *   SequentialPlan plan = new SequentialPlan(design, 1, 60);
 *   plan.lines().step(12, 30); plan.outcome(1.4).averageSampleNumber();
 * </pre>
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>At which totals may I stop?</td>
 *     <td>{@link jarwise.stats.sequential.SequentialPlan}</td></tr>
 * <tr><td>How often is it right, how many samples does it take?</td>
 *     <td>{@link jarwise.stats.sequential.SequentialOutcome}</td></tr>
 * <tr><td>My jars hold other numbers of growing points; will the next three settle it?</td>
 *     <td>{@link jarwise.stats.sequential.RoundInProgress}</td></tr>
 * <tr><td>When is the mean known well enough?</td>
 *     <td>{@link jarwise.stats.sequential.GreenLine},
 *     {@link jarwise.stats.sequential.KunoLine}</td></tr>
 * <tr><td>Is the mean different from a critical density?</td>
 *     <td>{@link jarwise.stats.sequential.IwaoBounds}</td></tr>
 * <tr><td>Which share of samples holds so many or more?</td>
 *     <td>{@link jarwise.stats.sequential.TallyThreshold}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.sequential;

import org.jspecify.annotations.NullMarked;
