/** The ways in from other devices: addresses, doors, and who may come in by which. */
@NullMarked
package jarwise.web.lan;

import org.jspecify.annotations.NullMarked;
