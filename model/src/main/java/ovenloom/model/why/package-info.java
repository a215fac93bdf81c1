/** Why a plan is as it is: what holds each of its runs where it is, and what comes of moving one. */
@NullMarked
package ovenloom.model.why;

import org.jspecify.annotations.NullMarked;
