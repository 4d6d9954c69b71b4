/** Copies of all data, from and into either database, and checks of them. */
@NullMarked
package jarwise.store.copy;

import org.jspecify.annotations.NullMarked;
