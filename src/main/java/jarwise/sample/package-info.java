/** The collected sample and its life: cut, washed, in the freezer, readable, read. */
@NullMarked
package jarwise.sample;

import org.jspecify.annotations.NullMarked;
