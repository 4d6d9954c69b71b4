@NullMarked
package jarwise.render.words;

import org.jspecify.annotations.NullMarked;
