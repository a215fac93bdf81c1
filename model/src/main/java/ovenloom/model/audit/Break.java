package ovenloom.model.audit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;

/**
 * One way in which a plan breaks a rule.
 *
 * @param rule its {@link KitchenRule#id()}
 * @param sentence its {@link KitchenRule#sentence()}
 * @param who what clashes: steps, ovens, cooks, vessels, by the names they have in the file
 * @param when where in time; absent where it has no time
 * @param off by how much, above 0, in {@code unit}
 * @param what the clash in a few words, values and all
 */
public record Break(
    String rule, String sentence, List<String> who, @Nullable Stretch when, long off, Unit unit,
    String what) {

  /** What {@code off} counts. */
  public enum Unit {
    MINUTES,
    PIECES,
    COOKS,
    WATTS,
    KELVINS,
    MILLIMETRES,
    GRAMS,
    OPENINGS,
    POINTS,
    TIMES
  }

  public Break {
    who = List.copyOf(who);
    if (off <= 0) {
      throw new IllegalArgumentException(rule + ": a break is off by more than nothing, not " + off);
    }
  }

  static Break of(
      KitchenRule rule, List<String> who, @Nullable Stretch when, long off, Unit unit, String what) {
    return new Break(rule.id(), rule.sentence(), who, when, off, unit, what);
  }
}
