/**
 * What is to be made: the event, its courses, dishes and steps, and the same work laid out batch by batch. {@link
 * ovenloom.model.menu.Work} is where a menu becomes steps that can be placed.
 */
@NullMarked
package ovenloom.model.menu;

import org.jspecify.annotations.NullMarked;
