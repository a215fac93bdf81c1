/** Many runs, one after another on each core: each is a value, its result a line, and a batch that was stopped goes on where it was. */
@NullMarked
package ovenloom.solver.batch;

import org.jspecify.annotations.NullMarked;
