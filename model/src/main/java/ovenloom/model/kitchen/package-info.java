/** What a kitchen has: ovens, burners, shelves, vessels, appliances, and the people who work in it. */
@NullMarked
package ovenloom.model.kitchen;

import org.jspecify.annotations.NullMarked;
