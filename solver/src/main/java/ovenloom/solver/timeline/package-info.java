/**
 * One thing that can be taken, over time: a pool, a pair of hands, a rack or a shelf. Each answers
 * when a need fits, takes the reservation, and names what stands in the way.
 */
@NullMarked
package ovenloom.solver.timeline;

import org.jspecify.annotations.NullMarked;
