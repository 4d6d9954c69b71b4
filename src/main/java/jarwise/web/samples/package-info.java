/** Samples: the list, one sample with its life and history, and the forms that change it. */
@NullMarked
package jarwise.web.samples;

import org.jspecify.annotations.NullMarked;
