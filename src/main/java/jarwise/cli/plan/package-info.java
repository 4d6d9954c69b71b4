/** Commands that plan a round before it is walked: one small class each. */
@NullMarked
package jarwise.cli.plan;

import org.jspecify.annotations.NullMarked;
