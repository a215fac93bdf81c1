/**
 * What to watch in a plan: where the predicted temperatures of its food break a limit of the safety profile, and what a
 * thermometer should show when. Read {@code Watch} first.
 */
@NullMarked
package ovenloom.model.watch;

import org.jspecify.annotations.NullMarked;
