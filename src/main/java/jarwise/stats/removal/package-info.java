/**
 * How much one wash brings off, and how many there were: repeat washes of the same material and
 * spikes of a known number.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>What came off in each wash?</td>
 *     <td>{@link jarwise.stats.removal.RemovalCatches}</td></tr>
 * <tr><td>How many were there in all?</td>
 *     <td>{@link jarwise.stats.removal.RemovalMethod}, {@link
 *     jarwise.stats.removal.RemovalEstimate}</td></tr>
 * <tr><td>From two washes, from three, by closed formulas?</td>
 *     <td>{@link jarwise.stats.removal.TwoPassRemoval}, {@link
 *     jarwise.stats.removal.ThreePassRemoval}</td></tr>
 * <tr><td>Does every wash bring off the same share?</td>
 *     <td>{@link jarwise.stats.removal.RemovalFit}, {@link
 *     jarwise.stats.removal.FirstWashTest}</td></tr>
 * <tr><td>How many washes are worth it?</td>
 *     <td>{@link jarwise.stats.removal.RemovalPrecision}</td></tr>
 * <tr><td>What share does one wash bring off, from spikes and repeat washes together?</td>
 *     <td>{@link jarwise.stats.removal.ExtractionEfficiency}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.removal;

import org.jspecify.annotations.NullMarked;
