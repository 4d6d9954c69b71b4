/** Reading filters: what a device needs for it, and when one may stop. */
@NullMarked
package jarwise.usecase.microscope;

import org.jspecify.annotations.NullMarked;
