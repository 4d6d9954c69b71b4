@NullMarked
package jarwise.tally;

import org.jspecify.annotations.NullMarked;
