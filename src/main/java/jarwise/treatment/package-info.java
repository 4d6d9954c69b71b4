/** Ledger of applications and releases. */
@NullMarked
package jarwise.treatment;

import org.jspecify.annotations.NullMarked;
