/** Events as the only source of counts, and the fold that turns them into counts. */
@NullMarked
package jarwise.tally;

import org.jspecify.annotations.NullMarked;
