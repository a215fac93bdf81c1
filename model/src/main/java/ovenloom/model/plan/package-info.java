/** What was decided: when and where each step runs, where food waits, how each dial is turned, what is washed. */
@NullMarked
package ovenloom.model.plan;

import org.jspecify.annotations.NullMarked;
