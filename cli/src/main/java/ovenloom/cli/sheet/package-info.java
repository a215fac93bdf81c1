/**
 * The run sheet: a plan as someone reads it off a cupboard door. {@link ovenloom.cli.sheet.RunSheet} is the way in;
 * it needs nothing but the plan.
 */
@NullMarked
package ovenloom.cli.sheet;

import org.jspecify.annotations.NullMarked;
