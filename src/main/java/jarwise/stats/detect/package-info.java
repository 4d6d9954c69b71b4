/**
 * How many samples find it, if it is there?
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>Jars, taps or cards from a crop, insects clumped?</td>
 *     <td>{@link jarwise.stats.detect.ClumpedDetection}</td></tr>
 * <tr><td>Units from a lot whose size is known?</td>
 *     <td>{@link jarwise.stats.detect.FiniteLot}</td></tr>
 * <tr><td>Units from a lot much larger than the sample?</td>
 *     <td>{@link jarwise.stats.detect.LargeLot}</td></tr>
 * <tr><td>Infested units that come together?</td>
 *     <td>{@link jarwise.stats.detect.CorrelatedLot}</td></tr>
 * <tr><td>Units tested together in pools?</td>
 *     <td>{@link jarwise.stats.detect.PooledDetection},
 *     {@link jarwise.stats.detect.PooledPrevalence}</td></tr>
 * <tr><td>Quick formulas found in print?</td>
 *     <td>{@link jarwise.stats.detect.LotShortForms}</td></tr>
 * <tr><td>Wash, tap, card and visual side by side?</td>
 *     <td>{@link jarwise.stats.detect.DetectionCurves}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.detect;

import org.jspecify.annotations.NullMarked;
