@NullMarked
package jarwise.render.report;

import org.jspecify.annotations.NullMarked;
