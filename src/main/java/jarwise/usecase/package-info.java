/** One class per thing the scout does; the only place where data and engine meet. */
@NullMarked
package jarwise.usecase;

import org.jspecify.annotations.NullMarked;
