/** Rounds: how many samples from which bench on which day. */
@NullMarked
package jarwise.plan;

import org.jspecify.annotations.NullMarked;
