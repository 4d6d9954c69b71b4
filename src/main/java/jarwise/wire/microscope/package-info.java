/** The filters to read, as a device keeps them for a day without a server. */
@NullMarked
package jarwise.wire.microscope;

import org.jspecify.annotations.NullMarked;
