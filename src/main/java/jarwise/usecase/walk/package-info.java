/** Walking a round: what the sheet shows, and the steps recorded without a script. */
@NullMarked
package jarwise.usecase.walk;

import org.jspecify.annotations.NullMarked;
