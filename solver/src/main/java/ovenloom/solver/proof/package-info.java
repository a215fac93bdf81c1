/** Shows that there is no plan, and what clashes. */
@NullMarked
package ovenloom.solver.proof;

import org.jspecify.annotations.NullMarked;
