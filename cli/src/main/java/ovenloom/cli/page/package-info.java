/**
 * A plan as one page for phone and paper, and many runs as another. {@link ovenloom.cli.page.PlanPage} and {@link ovenloom.cli.page.RunsPage} are
 * the ways in; the templates are in src/main/jte.
 */
@NullMarked
package ovenloom.cli.page;

import org.jspecify.annotations.NullMarked;
