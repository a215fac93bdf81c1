package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/**
 * How hot the inside of a bake can get, at any mark of any oven that will do, for as long as it may be in.
 *
 * @param overdone whether that is longer than it needs
 */
record HottestBake(Cards cards, boolean overdone) {

  /** A choice of more marks than that is not gone through. */
  private static final int MANY = 64;

  /** Minutes by which a stage may be longer or shorter. */
  private static final int SLIP = 3;

  /** The most a plan would take before it is never done, times the card's minutes. */
  private static final int TIMES_LONGER = 4;

  /** No plan lets a roast stand for longer than that, minutes. */
  private static final int MOST_MINUTES_OF_REST = 2 * 24 * 60;

  /** Of a bound on food that is not as warm all through, K. */
  private static final double MARGIN = 1;

  /** Marks in a mode of an oven. */
  private record Choice(Oven oven, String mode, List<Setting> marks) {}

  /**
   * What the coldest of it gets to, in the oven or by itself afterwards; infinite where that is not gone into.
   *
   * @param hottest any of it as it goes in, C
   * @param coldest any of it as it goes in
   */
  double inside(BatchStep step, Need.Bake bake, double hottest, double coldest) {
    List<Choice> choices = choices(bake);
    if (choices.size() > MANY) {
      return Double.POSITIVE_INFINITY;
    }
    BakeMinutes minutes = new BakeMinutes(cards);
    double most = hottest;
    for (Choice choice : choices) {
      int needed = minutes.needed(step, choice.oven(), choice.mode(), choice.marks(), coldest);
      most = Math.max(most, baked(step, bake, choice, hottest, longest(step, bake, needed)));
    }
    return most;
  }

  private int longest(BatchStep step, Need.Bake bake, int needed) {
    int surely = needed == BakeMinutes.NEVER ? TIMES_LONGER * step.minutes() : needed;
    return overdone ? BakeMinutes.longest(bake, step, surely)
        : Math.max(surely, step.mostMinutes() > step.minutes() ? step.mostMinutes() : 0);
  }

  private double baked(BatchStep step, Need.Bake bake, Choice choice, double start, int minutes) {
    TemperatureProfile food = TemperatureProfile.uniform(cards.fit(step, bake).body(), start);
    for (int minute = 0; minute < minutes; minute++) {
      food = Spell.inAnOven(food, hottest(step, bake, choice, minute));
    }
    Surroundings rest = new Rest(cards).after(step);
    boolean isAsThick = cards.fit(step, bake).body().equals(cards.substance().body(step));
    return (rest == null || !isAsThick ? Math.max(food.mean(), food.middle()) : rested(food, rest)) + MARGIN;
  }

  /** The coldest of it, middle or surface, as the warmth of the one gets to the other. */
  private static double rested(TemperatureProfile food, Surroundings rest) {
    Spell standing = new Spell.InStillAir(MOST_MINUTES_OF_REST, rest);
    TemperatureProfile now = food;
    double most = now.middle();
    for (int minute = 0; now.surface() > most && minute < standing.minutes(); minute++) {
      now = Spell.next(standing, minute, now);
      most = Math.max(most, Math.min(now.middle(), now.surface()));
    }
    return most;
  }

  /** Of the stages that may be on in a minute. */
  private Surroundings hottest(BatchStep step, Need.Bake bake, Choice choice, int minute) {
    double most = Double.NEGATIVE_INFINITY;
    int from = 0;
    int slip = 0;
    for (int i = 0; i < bake.stages().size(); i++) {
      Integer own = bake.stages().get(i).minutes();
      int to = own == null ? Integer.MAX_VALUE : from + own;
      boolean mayBeOn = minute >= from - slip && (own == null || minute < to + slip + SLIP);
      most = mayBeOn ? Math.max(most, air(bake, choice, i)) : most;
      from = to;
      slip += SLIP;
    }
    return new Surroundings(Temperature.celsius(most), cards.fit(step, bake).coefficient(),
        cards.substance().wetness(step));
  }

  private static double air(Need.Bake bake, Choice choice, int stage) {
    Double more = choice.oven().converts(choice.mode(), bake.stages().get(stage).mode());
    return choice.marks().get(stage).temperature().inCelsius() + (more == null ? 0 : more);
  }

  private List<Choice> choices(Need.Bake bake) {
    List<Choice> all = new ArrayList<>();
    for (Oven oven : cards.work().event().kitchen().ovens()) {
      for (String mode : oven.modes()) {
        List<List<Setting>> marks = List.of(List.of());
        for (Need.Stage stage : bake.stages()) {
          marks = marks.size() > MANY ? marks : and(marks, within(oven, mode, stage));
        }
        marks.forEach(each -> all.add(new Choice(oven, mode, each)));
      }
    }
    return all;
  }

  private static List<List<Setting>> and(List<List<Setting>> before, List<Setting> next) {
    List<List<Setting>> all = new ArrayList<>();
    for (List<Setting> each : before) {
      for (Setting one : next) {
        List<Setting> longer = new ArrayList<>(each);
        longer.add(one);
        all.add(longer);
      }
    }
    return all;
  }

  /** The marks at which an oven will do for a stage, the coolest first; none where the mode will not. */
  static List<Setting> within(Oven oven, String mode, Need.Stage stage) {
    Double more = oven.converts(stage.mode(), mode);
    return more == null ? List.of()
        : oven.dial()
            .within(stage.from().temperature().plusKelvins(more),
                stage.to().temperature().plusKelvins(more));
  }
}
