/** Planning a round: what is asked, what the site knows, what it costs and what it will tell. */
@NullMarked
package jarwise.usecase.planning;

import org.jspecify.annotations.NullMarked;
