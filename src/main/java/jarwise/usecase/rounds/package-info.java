/** Rounds: planned, registered with their labelled jars, shown, withdrawn. */
@NullMarked
package jarwise.usecase.rounds;

import org.jspecify.annotations.NullMarked;
