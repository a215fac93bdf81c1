package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ovenloom.model.heat.Ice;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;

/**
 * How many minutes a bake needs at other marks than its card says, and for food that is colder or warmer as it goes in. The card's
 * own setting and start need the card's minutes; others as many more or fewer as the same food takes by the laws of heat until
 * its middle is done.
 */
public final class BakeMinutes {

  /** It is not done there in any time worth waiting for. */
  public static final int NEVER = Integer.MAX_VALUE;

  /** How much longer than on its card a bake may take, before nobody would wait for it. */
  private static final int TIMES_LONGER = 4;

  /** However warm food goes in, it takes so much of its written minutes to brown, percent. Common practice. */
  private static final int PERCENT_TO_BROWN = 85;

  /** From frozen, at least so much longer than from thawed; in part, if a part is ice. USDA, of turkey; row F34 of the facts. */
  private static final double LONGER_FROZEN = 0.5;

  private static final int ALL = 100;
  private static final int PERCENT_A_POINT = 5;

  /** Just below a whole degree still counts as that. */
  private static final double NEARLY = 1e-6;

  private final Cards cards;
  private final Map<Asked, Integer> known = new ConcurrentHashMap<>();

  private record Asked(String step, String oven, String mode, List<Setting> marks, int celsius) {}

  /** By these cards. */
  public BakeMinutes(Cards cards) {
    this.cards = cards;
  }

  /**
   * Minutes until food is done that is so cold as it goes in.
   *
   * @param marks one for each stage
   * @param start by layers, as it goes in
   * @return {@link #NEVER} where it is not done in four times its written minutes
   */
  public int needed(BatchStep step, Oven oven, String mode, List<Setting> marks, TemperatureProfile start) {
    Cards.Fit fit = cards.fit(step, bake(step));
    if (!fit.bends()) {
      return step.minutes();
    }
    int needed = minutes(step, fit, oven, mode, marks, start.stretched(fit.body()));
    return needed == NEVER ? NEVER : Math.max(needed, least(step, fit, oven, mode, marks, start.frozen()));
  }

  /** The same for food that is as cold all through, C, rounded down to a whole degree; worked out once for each. */
  public int needed(BatchStep step, Oven oven, String mode, List<Setting> marks, double celsius) {
    Cards.Fit fit = cards.fit(step, bake(step));
    if (!fit.bends()) {
      return step.minutes();
    }
    int needed = minutes(step, fit, oven, mode, marks, wholeDegrees(celsius));
    double frozen = wholeDegrees(celsius) < Ice.MELTS ? 1 : 0;
    return needed == NEVER ? NEVER : Math.max(needed, least(step, fit, oven, mode, marks, frozen));
  }

  private int minutes(BatchStep step, Cards.Fit fit, Oven oven, String mode, List<Setting> marks,
      int celsius) {
    String name = step.dish().name() + "/" + step.step().name();
    return known.computeIfAbsent(new Asked(name, oven.name(), mode, marks, celsius),
        asked -> minutes(step, fit, oven, mode, marks, TemperatureProfile.uniform(fit.body(), celsius)));
  }

  /** So many it takes however warm it goes in: its stages, and to brown; and from frozen, if its card means thawed. */
  private int least(
      BatchStep step, Cards.Fit fit, Oven oven, String mode, List<Setting> marks, double frozen) {
    if (frozen > 0 && cards.start(step) >= Ice.MELTS) {
      int thawed = needed(step, oven, mode, marks, Math.max(0, cards.celsius(StartState.CHILLED)));
      return thawed == NEVER ? 0 : (int) Math.ceil(thawed * (1 + frozen * LONGER_FROZEN));
    }
    int meant = minutes(step, fit, oven, mode, marks, wholeDegrees(cards.start(step)));
    int stages = 1;
    for (Need.Stage stage : bake(step).stages()) {
      stages += stage.minutes() == null ? 0 : stage.minutes();
    }
    return meant == NEVER ? stages : Math.max(stages, (meant * PERCENT_TO_BROWN + ALL - 1) / ALL);
  }

  /** Rounded down, to the safe side. */
  public static int wholeDegrees(double celsius) {
    return (int) Math.floor(celsius + NEARLY);
  }

  /** The most minutes for which food may be baked that needs so many. */
  public static int longest(Need.Bake bake, BatchStep step, int needed) {
    int longer = (needed * (ALL + bake.overcookPercent()) + ALL - 1) / ALL;
    return step.mostMinutes() > step.minutes() ? Math.max(longer, step.mostMinutes()) : longer;
  }

  /** What it costs to bake longer than needed: a point for each 5 %. */
  public static int points(int booked, int needed) {
    return needed == NEVER ? 0 : ALL * Math.max(0, booked - needed) / needed / PERCENT_A_POINT;
  }

  /** By these cards it counts. */
  public Cards cards() {
    return cards;
  }

  /** In proportion to what is written, rounded up. */
  private int minutes(
      BatchStep step, Cards.Fit fit, Oven oven, String mode, List<Setting> marks, TemperatureProfile start) {
    Need.Bake bake = bake(step);
    List<Surroundings> stages = new ArrayList<>();
    for (int stage = 0; stage < marks.size(); stage++) {
      Double more = oven.converts(mode, bake.stages().get(stage).mode());
      Temperature air = marks.get(stage).temperature().plusKelvins(more == null ? 0 : more);
      stages.add(new Surroundings(air, fit.coefficient(), cards.substance().wetness(step)));
    }
    int found = Cards.minutesUntil(cards.done(step), start, bake, stages, TIMES_LONGER * step.minutes());
    return found == NEVER ? NEVER : (step.minutes() * found + fit.minutes() - 1) / fit.minutes();
  }

  private static Need.Bake bake(BatchStep step) {
    Need.Bake bake = step.step().bake();
    if (bake == null) {
      throw new IllegalArgumentException(step + " is no bake");
    }
    return bake;
  }
}
