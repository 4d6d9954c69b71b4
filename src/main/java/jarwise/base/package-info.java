/** The few things every package may use. */
@NullMarked
package jarwise.base;

import org.jspecify.annotations.NullMarked;
