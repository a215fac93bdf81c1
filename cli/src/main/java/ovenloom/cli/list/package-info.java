/** A plan as one table, for a spreadsheet. {@link ovenloom.cli.list.PlanList} is the way in. */
@NullMarked
package ovenloom.cli.list;

import org.jspecify.annotations.NullMarked;
