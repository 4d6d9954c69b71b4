@NullMarked
package jarwise.treatment;

import org.jspecify.annotations.NullMarked;
