@NullMarked
package jarwise.cli.model;

import org.jspecify.annotations.NullMarked;
