/** Comparing levels: densities, ratios of every two, one test for all. */
@NullMarked
package jarwise.stats.comparison;

import org.jspecify.annotations.NullMarked;
