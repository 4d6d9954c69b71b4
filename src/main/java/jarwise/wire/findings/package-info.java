/** Findings as files for other programs. */
@NullMarked
package jarwise.wire.findings;

import org.jspecify.annotations.NullMarked;
