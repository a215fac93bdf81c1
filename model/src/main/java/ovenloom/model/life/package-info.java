/**
 * How warm each dish is along its whole life: a plan says where its food is, and the laws of heat what becomes of it there.
 * Read {@code Life} first.
 */
@NullMarked
package ovenloom.model.life;

import org.jspecify.annotations.NullMarked;
