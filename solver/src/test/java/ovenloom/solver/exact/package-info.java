/**
 * The best plan of a small kitchen, proven, to hold the search against: every rule said once more, as CP-SAT understands
 * it, minute by minute. It knows the words of the model and nothing of how the solver plans.
 */
@NullMarked
package ovenloom.solver.exact;

import org.jspecify.annotations.NullMarked;
