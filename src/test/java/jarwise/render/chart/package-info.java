@NullMarked
package jarwise.render.chart;

import org.jspecify.annotations.NullMarked;
