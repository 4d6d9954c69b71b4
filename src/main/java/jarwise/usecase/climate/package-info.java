/** What a temperature log tells: heat gathered, and when to treat again. */
@NullMarked
package jarwise.usecase.climate;

import org.jspecify.annotations.NullMarked;
