/** Commands about patterns: clumping, spread over a map, growth, and method by method. */
@NullMarked
package jarwise.cli.pattern;

import org.jspecify.annotations.NullMarked;
