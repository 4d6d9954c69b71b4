/** The list of pests that comes with the program. */
@NullMarked
package jarwise.wire.pest;

import org.jspecify.annotations.NullMarked;
