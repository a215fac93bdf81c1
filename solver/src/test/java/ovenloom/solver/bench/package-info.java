/** Measuring against published problems, and reading them. */
@NullMarked
package ovenloom.solver.bench;

import org.jspecify.annotations.NullMarked;
