/**
 * Mean density per sampling unit with honest intervals, bounds on zero counts, probability above an
 * action threshold.
 */
@NullMarked
package jarwise.stats.estimate;

import org.jspecify.annotations.NullMarked;
