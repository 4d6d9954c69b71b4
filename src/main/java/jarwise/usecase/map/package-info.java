/** The crop map: what stands where, what is known there; drawing, moving, bringing in. */
@NullMarked
package jarwise.usecase.map;

import org.jspecify.annotations.NullMarked;
