/** The page on which counts come in from a sheet: drop, check, import, take back. */
@NullMarked
package jarwise.web.intake;

import org.jspecify.annotations.NullMarked;
