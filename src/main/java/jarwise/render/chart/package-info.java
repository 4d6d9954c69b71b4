/**
 * Pictures as SVG text, made on the server: records in, text out. No script, no style attribute, no
 * font measuring; every mark carries its values.
 */
@NullMarked
package jarwise.render.chart;

import org.jspecify.annotations.NullMarked;
