/** What the sheets of the laboratory tell: recounts, seeded filters, spikes. */
@NullMarked
package jarwise.usecase.laboratory;

import org.jspecify.annotations.NullMarked;
