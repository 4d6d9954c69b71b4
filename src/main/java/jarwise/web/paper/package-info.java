/** Labels and sheets of a round as PDF, and the form in which a paper sheet is typed in. */
@NullMarked
package jarwise.web.paper;

import org.jspecify.annotations.NullMarked;
