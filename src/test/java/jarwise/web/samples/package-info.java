/** What the page of a sample says. */
@NullMarked
package jarwise.web.samples;

import org.jspecify.annotations.NullMarked;
