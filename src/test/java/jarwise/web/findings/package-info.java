/** The pages Today, Findings and Report, asked over HTTP and driven in a browser. */
@NullMarked
package jarwise.web.findings;

import org.jspecify.annotations.NullMarked;
