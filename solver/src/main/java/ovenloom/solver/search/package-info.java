/** Finds plans: Timefold moves an order of runs, the decoder turns each order into a plan, the best one is kept. */
@NullMarked
package ovenloom.solver.search;

import org.jspecify.annotations.NullMarked;
