/**
 * What did a treatment do? Efficacy from samples of treated and check benches, before and after.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>What was sampled?</td><td>{@link jarwise.stats.efficacy.EfficacyTrial}</td></tr>
 * <tr><td>The textbooks' figures</td>
 *     <td>{@link jarwise.stats.efficacy.ClassicalEfficacy}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.efficacy;

import org.jspecify.annotations.NullMarked;
