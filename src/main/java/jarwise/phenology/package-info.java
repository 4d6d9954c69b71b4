/** Temperatures that drive development. */
@NullMarked
package jarwise.phenology;

import org.jspecify.annotations.NullMarked;
