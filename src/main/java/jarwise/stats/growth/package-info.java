/** How fast the density grows, and when it will be above a threshold. */
@NullMarked
package jarwise.stats.growth;

import org.jspecify.annotations.NullMarked;
