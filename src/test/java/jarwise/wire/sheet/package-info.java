@NullMarked
package jarwise.wire.sheet;

import org.jspecify.annotations.NullMarked;
