/**
 * The demo nursery: entirely invented, drawn from a fixed seed. Its data show what Jarwise does;
 * they are never evidence that a method is right.
 */
@NullMarked
package jarwise.usecase.demo;

import org.jspecify.annotations.NullMarked;
