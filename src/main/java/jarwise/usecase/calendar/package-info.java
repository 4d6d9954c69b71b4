/** Deadlines for the calendars of phones. */
@NullMarked
package jarwise.usecase.calendar;

import org.jspecify.annotations.NullMarked;
