/** Counts from sheets: read, compared with what is there, taken in whole or not at all. */
@NullMarked
package jarwise.usecase.intake;

import org.jspecify.annotations.NullMarked;
