/** Temperature logs and the published constants of development, read from files. */
@NullMarked
package jarwise.wire.climate;

import org.jspecify.annotations.NullMarked;
