/** Sheets taken in for real: a database of its own for each test. */
@NullMarked
package jarwise.usecase.intake;

import org.jspecify.annotations.NullMarked;
