/** The letter to the grower: one page, as HTML that stands alone and as PDF. */
@NullMarked
package jarwise.render.report;

import org.jspecify.annotations.NullMarked;
