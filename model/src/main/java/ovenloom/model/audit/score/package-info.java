/**
 * Counts the score of a plan again, from the plan alone, one class a kind of points. {@link
 * ovenloom.model.audit.score.Reckoning} is the door.
 */
@NullMarked
package ovenloom.model.audit.score;

import org.jspecify.annotations.NullMarked;
