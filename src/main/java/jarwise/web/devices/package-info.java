/** Letting phones in: the page at the desk, and the two that a new phone sees. */
@NullMarked
package jarwise.web.devices;

import org.jspecify.annotations.NullMarked;
