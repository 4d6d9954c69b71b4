/**
 * The sampling universe: nursery, house, bay, bench; crop lots and where they stood from when to
 * when.
 */
@NullMarked
package jarwise.site;

import org.jspecify.annotations.NullMarked;
