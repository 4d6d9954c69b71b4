/** Two methods of sampling against each other, from the same benches and days. */
@NullMarked
package jarwise.stats.calibration;

import org.jspecify.annotations.NullMarked;
