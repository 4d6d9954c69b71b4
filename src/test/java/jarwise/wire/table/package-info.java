@NullMarked
package jarwise.wire.table;

import org.jspecify.annotations.NullMarked;
