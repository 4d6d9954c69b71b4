/** Keys and certificates: what lets a phone trust this machine. */
@NullMarked
package jarwise.web.tls;

import org.jspecify.annotations.NullMarked;
