/** Pieces that several pages are put together from, already in the reader's words. */
@NullMarked
package jarwise.web.piece;

import org.jspecify.annotations.NullMarked;
