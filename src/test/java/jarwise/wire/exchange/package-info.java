@NullMarked
package jarwise.wire.exchange;

import org.jspecify.annotations.NullMarked;
