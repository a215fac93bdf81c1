/**
 * Holds a plan against the rules of the kitchen, one class a rule, and knows nothing of how the plan was made. {@link
 * ovenloom.model.audit.Audit} is the list of rules.
 */
@NullMarked
package ovenloom.model.audit;

import org.jspecify.annotations.NullMarked;
