/** Pages where samples, sheets and settings are kept, over a real server. */
@NullMarked
package jarwise.web.desk;

import org.jspecify.annotations.NullMarked;
