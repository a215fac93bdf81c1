/** The decoder: given an order and choices, sets each step down as late as it fits. */
@NullMarked
package ovenloom.solver.place;

import org.jspecify.annotations.NullMarked;
