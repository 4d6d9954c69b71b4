/** The calendar of a site, and the page that gives its address. */
@NullMarked
package jarwise.web.calendar;

import org.jspecify.annotations.NullMarked;
