/** A plan as one table, for a spreadsheet, and many runs as another: {@link ovenloom.cli.list.PlanList}, {@link ovenloom.cli.list.RunList}. */
@NullMarked
package ovenloom.cli.list;

import org.jspecify.annotations.NullMarked;
