@NullMarked
package jarwise.cli;

import org.jspecify.annotations.NullMarked;
