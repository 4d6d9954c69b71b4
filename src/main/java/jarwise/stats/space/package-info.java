/**
 * Where on the map: the share of benches with a find, whether dense benches lie beside dense ones,
 * and whether new finds lie beside old ones.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>On what share of benches is it?</td>
 *     <td>{@link jarwise.stats.space.ShareOfBenches}</td></tr>
 * <tr><td>Do dense benches lie together?</td><td>{@link jarwise.stats.space.MoranTest}</td></tr>
 * <tr><td>Does it spread from bench to bench?</td>
 *     <td>{@link jarwise.stats.space.NewNextToOld}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.space;

import org.jspecify.annotations.NullMarked;
