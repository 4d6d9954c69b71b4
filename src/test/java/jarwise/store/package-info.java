@NullMarked
package jarwise.store;

import org.jspecify.annotations.NullMarked;
