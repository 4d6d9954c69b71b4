/** The methods page: every formula, what it assumes and where it comes from. */
@NullMarked
package jarwise.web.methods;

import org.jspecify.annotations.NullMarked;
