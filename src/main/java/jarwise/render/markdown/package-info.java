/** Documents written in Markdown, shown as pages. The only place that knows the reader of it. */
@NullMarked
package jarwise.render.markdown;

import org.jspecify.annotations.NullMarked;
