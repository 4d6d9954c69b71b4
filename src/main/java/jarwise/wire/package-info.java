/** Records to JSON, CSV and xlsx and back: the only place that knows field names of files. */
@NullMarked
package jarwise.wire;

import org.jspecify.annotations.NullMarked;
