@NullMarked
package jarwise.site.floor;

import org.jspecify.annotations.NullMarked;
