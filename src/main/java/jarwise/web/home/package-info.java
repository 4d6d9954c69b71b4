/** The way in: which site, what is on record, naming the first one. */
@NullMarked
package jarwise.web.home;

import org.jspecify.annotations.NullMarked;
