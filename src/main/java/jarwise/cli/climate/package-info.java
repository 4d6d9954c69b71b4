/** Commands that read a temperature log. */
@NullMarked
package jarwise.cli.climate;

import org.jspecify.annotations.NullMarked;
