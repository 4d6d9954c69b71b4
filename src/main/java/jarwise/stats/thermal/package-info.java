/** Heat that drives development: degree-days, thermal constants, stages that take time. */
@NullMarked
package jarwise.stats.thermal;

import org.jspecify.annotations.NullMarked;
