/** A plan as entries of a calendar, for the phone of whoever cooks. {@link ovenloom.cli.calendar.PlanCalendar} is the way in. */
@NullMarked
package ovenloom.cli.calendar;

import org.jspecify.annotations.NullMarked;
