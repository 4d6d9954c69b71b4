/** Faults made with the real thing: what a scout is told, and that nothing acknowledged is lost. */
@NullMarked
package jarwise.fault;

import org.jspecify.annotations.NullMarked;
