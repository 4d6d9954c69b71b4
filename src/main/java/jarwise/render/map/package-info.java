/** The nursery from above: houses, benches and what is known of them. */
@NullMarked
package jarwise.render.map;

import org.jspecify.annotations.NullMarked;
