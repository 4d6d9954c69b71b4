/**
 * Count sheets: which column means what, every row checked, zero kept apart from blank. The only
 * place that knows the names of a sheet's columns.
 */
@NullMarked
package jarwise.wire.sheet;

import org.jspecify.annotations.NullMarked;
