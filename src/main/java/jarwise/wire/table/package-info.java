/**
 * Tables as people send them, CSV or xlsx: cells of text with the row number a person sees in the
 * spreadsheet. Refuses what is cut off, too large, or made to harm, before anything reads it.
 */
@NullMarked
package jarwise.wire.table;

import org.jspecify.annotations.NullMarked;
