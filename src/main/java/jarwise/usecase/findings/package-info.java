/** What the use cases about findings share, and what they answer. */
@NullMarked
package jarwise.usecase.findings;

import org.jspecify.annotations.NullMarked;
