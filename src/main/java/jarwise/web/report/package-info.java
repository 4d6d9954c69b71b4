/** The grower's letter: to read here, to print, to send. */
@NullMarked
package jarwise.web.report;

import org.jspecify.annotations.NullMarked;
