/** Variations of one event: along which axes it differs, and which of them are asked for. */
@NullMarked
package ovenloom.model.variation;

import org.jspecify.annotations.NullMarked;
