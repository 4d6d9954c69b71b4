/** The microscope page: a program of its own in the browser, and what it needs. */
@NullMarked
package jarwise.web.microscope;

import org.jspecify.annotations.NullMarked;
