/** How answers are printed: tables and figures for people, one JSON object for programs. */
@NullMarked
package jarwise.cli.print;

import org.jspecify.annotations.NullMarked;
