/** Tables of the work in the houses: treatments, releases, temperatures, moves, rounds. */
@NullMarked
package jarwise.store.work;

import org.jspecify.annotations.NullMarked;
