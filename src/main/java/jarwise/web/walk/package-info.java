/** The round sheet: a page for the phone in the house. */
@NullMarked
package jarwise.web.walk;

import org.jspecify.annotations.NullMarked;
