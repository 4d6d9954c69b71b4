/** Poisson and negative binomial counts: probability and fit. */
@NullMarked
package jarwise.stats.count;

import org.jspecify.annotations.NullMarked;
