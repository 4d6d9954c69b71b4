/** What is done to one sample at the desk: entered, counted, corrected, ended, looked at. */
@NullMarked
package jarwise.usecase.samples;

import org.jspecify.annotations.NullMarked;
