/** Picks, of the ways in which a card lets its food be cooled, one that is fast enough to be safe. */
@NullMarked
package ovenloom.model.chill;

import org.jspecify.annotations.NullMarked;
