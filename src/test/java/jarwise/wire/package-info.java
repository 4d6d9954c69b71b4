@NullMarked
package jarwise.wire;

import org.jspecify.annotations.NullMarked;
