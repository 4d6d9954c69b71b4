/** What the grower's letter says, part by part. */
@NullMarked
package jarwise.usecase.letter;

import org.jspecify.annotations.NullMarked;
