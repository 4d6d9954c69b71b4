/** Labels and paper sheets as PDF, true to scale: records in, bytes out. Lengths are in mm. */
@NullMarked
package jarwise.render.label;

import org.jspecify.annotations.NullMarked;
