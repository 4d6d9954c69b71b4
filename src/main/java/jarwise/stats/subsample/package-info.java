/**
 * How many are there in all, if only a part of a part was counted?
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>Some squares of an extract?</td>
 *     <td>{@link jarwise.stats.subsample.AliquotTotal}</td></tr>
 * <tr><td>Some plants of some benches?</td>
 *     <td>{@link jarwise.stats.subsample.TwoStageSample},
 *     {@link jarwise.stats.subsample.TwoStageTotal}</td></tr>
 * <tr><td>Insects per growing point from jars of different fill?</td>
 *     <td>{@link jarwise.stats.subsample.RatioPerUnit}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.subsample;

import org.jspecify.annotations.NullMarked;
