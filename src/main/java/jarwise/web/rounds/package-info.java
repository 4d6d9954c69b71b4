/** Rounds: the list, the planning, one round with its jars. */
@NullMarked
package jarwise.web.rounds;

import org.jspecify.annotations.NullMarked;
