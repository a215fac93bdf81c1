/** A plan as one page for phone and paper. {@link ovenloom.cli.page.PlanPage} is the way in; the templates are in src/main/jte. */
@NullMarked
package ovenloom.cli.page;

import org.jspecify.annotations.NullMarked;
