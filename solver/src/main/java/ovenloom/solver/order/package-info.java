/** What Timefold moves: the order in which steps are placed, and what is decided for each; and the moves themselves. */
@NullMarked
package ovenloom.solver.order;

import org.jspecify.annotations.NullMarked;
