/** Deadlines as an iCalendar file, which any calendar reads. */
@NullMarked
package jarwise.wire.calendar;

import org.jspecify.annotations.NullMarked;
