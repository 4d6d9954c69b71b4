/** Quality: what readers find, what the wash brings off, blanks, recounts. */
@NullMarked
package jarwise.web.quality;

import org.jspecify.annotations.NullMarked;
