/**
 * How is a round laid out?
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>How many samples for a wanted precision?</td>
 *     <td>{@link jarwise.stats.design.FixedPrecision}, {@link jarwise.stats.design.VarianceLaw}
 *     </td></tr>
 * <tr><td>How many growing points in a jar?</td>
 *     <td>{@link jarwise.stats.design.JarClumping},
 *     {@link jarwise.stats.design.VarianceComponents}</td></tr>
 * <tr><td>How many samples from which part of the crop?</td>
 *     <td>{@link jarwise.stats.design.Allocation},
 *     {@link jarwise.stats.design.AllocatedStratum}</td></tr>
 * <tr><td>Which plants, and in which order?</td>
 *     <td>{@link jarwise.stats.design.Placing}, {@link jarwise.stats.design.PlantStand}</td></tr>
 * <tr><td>How long will it take, and will it be read in time?</td>
 *     <td>{@link jarwise.stats.design.Workload}, {@link jarwise.stats.design.ReadingWindow}
 *     </td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.design;

import org.jspecify.annotations.NullMarked;
