/** The program's start: every object is built here once and connected. */
@NullMarked
package jarwise;

import org.jspecify.annotations.NullMarked;
