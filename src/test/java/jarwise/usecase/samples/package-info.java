/** What the desk does to samples, on a real database. */
@NullMarked
package jarwise.usecase.samples;

import org.jspecify.annotations.NullMarked;
