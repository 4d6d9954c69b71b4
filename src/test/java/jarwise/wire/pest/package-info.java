@NullMarked
package jarwise.wire.pest;

import org.jspecify.annotations.NullMarked;
