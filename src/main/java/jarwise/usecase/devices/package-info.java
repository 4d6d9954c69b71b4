/** Letting phones and tablets in, and shutting them out. */
@NullMarked
package jarwise.usecase.devices;

import org.jspecify.annotations.NullMarked;
