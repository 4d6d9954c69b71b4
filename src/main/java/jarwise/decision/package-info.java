/** Action thresholds and the verdict against them. */
@NullMarked
package jarwise.decision;

import org.jspecify.annotations.NullMarked;
