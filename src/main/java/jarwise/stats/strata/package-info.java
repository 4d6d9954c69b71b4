/**
 * Mean density over a crop that was sampled part by part.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>What stands in each part, what was sampled?</td>
 *     <td>{@link jarwise.stats.strata.Stratum}</td></tr>
 * <tr><td>How many are there over the whole crop?</td>
 *     <td>{@link jarwise.stats.strata.StratifiedDensity}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.strata;

import org.jspecify.annotations.NullMarked;
