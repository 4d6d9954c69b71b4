/**
 * Two counts of the same things: how far readers differ, and whether one sitting drifts.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>How far apart are two counts of one thing?</td>
 *     <td>{@link jarwise.stats.agreement.LimitsOfAgreement}</td></tr>
 * <tr><td>Do the two say the same, in one number?</td>
 *     <td>{@link jarwise.stats.agreement.Concordance}</td></tr>
 * <tr><td>How far apart would chance alone bring them?</td>
 *     <td>{@link jarwise.stats.agreement.CountingBand}</td></tr>
 * <tr><td>Does a reader see less as the sitting goes on?</td>
 *     <td>{@link jarwise.stats.agreement.SittingDrift}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.agreement;

import org.jspecify.annotations.NullMarked;
