/**
 * Finds what makes an event impossible before anybody searches for a plan: rings of steps, pans too large, work longer than
 * anybody stays. {@link ovenloom.model.check.Checks} is the list.
 */
@NullMarked
package ovenloom.model.check;

import org.jspecify.annotations.NullMarked;
