/** When to treat again: published constants, and the time between hatching and leaving a stage. */
@NullMarked
package jarwise.phenology.window;

import org.jspecify.annotations.NullMarked;
