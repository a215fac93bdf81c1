package ovenloom.model.menu;

import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Composition;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Conductivity;
import ovenloom.model.measure.Length;

/**
 * What a dish is as heat meets it, so far as its card says.
 *
 * @param kind absent: by its steps
 * @param thick a piece of it, or how deep it is in its vessel; absent: by its kind and vessel
 * @param madeOf absent: by its kind
 * @param conducts thawed; absent: by what it is made of
 * @param covered whether a lid or foil is on it off the heat; absent: nobody knows
 */
public record Matter(
    @Nullable Kind kind,
    @Nullable Length thick,
    @Nullable Composition madeOf,
    @Nullable Conductivity conducts,
    @Nullable Boolean covered) {

  /** Of which a card says nothing. */
  public static final Matter UNSAID = new Matter(null, null, null, null, null);
}
