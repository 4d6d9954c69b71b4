/** The page Findings: answer, picture, table, why. */
@NullMarked
package jarwise.web.findings;

import org.jspecify.annotations.NullMarked;
