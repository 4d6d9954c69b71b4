/** The round sheet as a phone keeps it. */
@NullMarked
package jarwise.wire.walk;

import org.jspecify.annotations.NullMarked;
