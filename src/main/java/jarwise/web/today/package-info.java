/** The page Today: what can't wait, and what is known. */
@NullMarked
package jarwise.web.today;

import org.jspecify.annotations.NullMarked;
