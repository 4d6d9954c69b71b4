/** The crop map: what a round found from above, drawing the nursery, moving crop lots. */
@NullMarked
package jarwise.web.map;

import org.jspecify.annotations.NullMarked;
