/** Where houses, benches and known trouble spots lie, in metres. */
@NullMarked
package jarwise.site.floor;

import org.jspecify.annotations.NullMarked;
