/** What devices and the server say to each other: events out, how far they arrived back. */
@NullMarked
package jarwise.wire.exchange;

import org.jspecify.annotations.NullMarked;
