/** The plan of a nursery as a file that other programs read. */
@NullMarked
package jarwise.wire.floor;

import org.jspecify.annotations.NullMarked;
