/** The one address to which devices send their events. */
@NullMarked
package jarwise.web.exchange;

import org.jspecify.annotations.NullMarked;
