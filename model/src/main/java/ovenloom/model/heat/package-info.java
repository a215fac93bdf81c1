/** How warm food is over its life: what it is made of, what surrounds it, and how heat gets in and out. */
@NullMarked
package ovenloom.model.heat;

import org.jspecify.annotations.NullMarked;
