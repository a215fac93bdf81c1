/**
 * Limits that can hurt someone, as data with their source. Local codes and licensed practice come first: whoever cooks for
 * others asks for those that hold where they cook.
 */
@NullMarked
package ovenloom.model.safety;

import org.jspecify.annotations.NullMarked;
