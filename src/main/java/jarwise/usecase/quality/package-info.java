/** How far counts can be trusted: known filters, spikes, washes again, blanks, recounts. */
@NullMarked
package jarwise.usecase.quality;

import org.jspecify.annotations.NullMarked;
