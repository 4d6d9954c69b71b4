/** Codes in pictures. */
@NullMarked
package jarwise.render.scan;

import org.jspecify.annotations.NullMarked;
