/** What "better" means, one class a wish: points that a draft earns, fewer being better. */
@NullMarked
package ovenloom.solver.wish;

import org.jspecify.annotations.NullMarked;
