/** The kitchen over the time of a plan: who and what is taken when. {@link ovenloom.cli.lane.Lanes} is the way in. */
@NullMarked
package ovenloom.cli.lane;

import org.jspecify.annotations.NullMarked;
