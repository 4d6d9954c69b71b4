/** Answers as JSON; the library that writes it is named here and nowhere else. */
@NullMarked
package jarwise.wire.json;

import org.jspecify.annotations.NullMarked;
