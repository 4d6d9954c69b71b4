/**
 * How clumped: indices of dispersion of one group of samples, and how the variance goes with the
 * mean over several.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>Are the samples of one group clumped, and how much?</td>
 *     <td>{@link jarwise.stats.dispersion.CountDispersion}</td></tr>
 * <tr><td>How does the variance go with the mean?</td>
 *     <td>{@link jarwise.stats.dispersion.MeanVarianceLines}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.dispersion;

import org.jspecify.annotations.NullMarked;
