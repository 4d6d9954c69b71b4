/** Patterns in a sheet of counts: clumping, spread over a map, growth, and method by method. */
@NullMarked
package jarwise.usecase.pattern;

import org.jspecify.annotations.NullMarked;
