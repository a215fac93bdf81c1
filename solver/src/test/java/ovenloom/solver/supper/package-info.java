/** Suppers for tests: written as a cook would write them, decoded or planned, and told in a cook's words. */
@NullMarked
package ovenloom.solver.supper;

import org.jspecify.annotations.NullMarked;
