@NullMarked
package jarwise.web.exchange;

import org.jspecify.annotations.NullMarked;
