/** Commands that fit models to a sheet of counts. */
@NullMarked
package jarwise.cli.model;

import org.jspecify.annotations.NullMarked;
