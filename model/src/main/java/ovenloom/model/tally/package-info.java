/**
 * What many results come to: counts and means for each choice, which choices fit together, which runs no other beats, and which dishes
 * decide. {@link ovenloom.model.tally.Tally} is the way in.
 */
@NullMarked
package ovenloom.model.tally;

import org.jspecify.annotations.NullMarked;
