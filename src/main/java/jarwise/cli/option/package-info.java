/** What the commands share in their options: sheets, data, numbers, each checked when read. */
@NullMarked
package jarwise.cli.option;

import org.jspecify.annotations.NullMarked;
