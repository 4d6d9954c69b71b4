/** What is printed for a round, and what was written on paper and is typed in. */
@NullMarked
package jarwise.usecase.paper;

import org.jspecify.annotations.NullMarked;
