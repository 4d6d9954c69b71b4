/** What the site has chosen, each choice with its day, reason and source; and the forms for it. */
@NullMarked
package jarwise.web.settings;

import org.jspecify.annotations.NullMarked;
