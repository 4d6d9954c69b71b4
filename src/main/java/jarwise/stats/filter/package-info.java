/**
 * Reading a part of a filter: in which order, what the rest may hold, and when to stop.
 *
 * <table>
 * <caption>Which class for which question</caption>
 * <tr><td>What does a part of the filter say about all of it?</td>
 *     <td>{@link jarwise.stats.filter.PartialReading}</td></tr>
 * <tr><td>In which order are cells read?</td>
 *     <td>{@link jarwise.stats.filter.FilterLayout}, {@link
 *     jarwise.stats.filter.CellWalk}</td></tr>
 * <tr><td>May the reader stop?</td>
 *     <td>{@link jarwise.stats.filter.StopRules}</td></tr>
 * </table>
 */
@NullMarked
package jarwise.stats.filter;

import org.jspecify.annotations.NullMarked;
