/** Findings in words: the same on pages, in the letter and in files. */
@NullMarked
package jarwise.render.finding;

import org.jspecify.annotations.NullMarked;
