package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.Goal;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.life.Life;
import ovenloom.model.life.Track;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/**
 * How warm a dish is predicted to be in the last hours to the table and while it is served.
 *
 * @param middle points for a polyline, minutes of the window across and C down from {@link #HOTTEST}
 * @param surface the same
 * @param goal what it is to be at the table
 * @param served the minute of the window in which it comes to the table
 */
public record Warmth(String dish, Window window, String middle, String surface, Goal goal, int served,
    String told) {

  /** The top of the drawing, C. */
  public static final int HOTTEST = 110;

  /** Its foot, C. */
  public static final int COLDEST = -20;

  private static final int HOURS = 6 * 60;
  private static final int STEP = 2;

  /** So many times have room beside each other. */
  private static final int ROOM = 7;

  static List<Warmth> of(Plan plan, Life life) {
    List<Warmth> all = new ArrayList<>();
    for (Dish dish : plan.event().dishes()) {
      Track track = dish.food() ? life.of(dish, 1) : null;
      if (track != null && track.to() > track.from()) {
        all.add(of(plan, dish, track));
      }
    }
    return all;
  }

  private static Warmth of(Plan plan, Dish dish, Track track) {
    int due = plan.event().due(dish, 1);
    Stretch when = new Stretch(Math.max(track.from(), due - HOURS), Math.max(track.to(), due + 1));
    double room = plan.event().kitchen().room().inCelsius();
    String told = String.format(Locale.ENGLISH,
        "%s C in the middle and %s C outside as it comes to the table.",
        Math.round(track.food(due).middle()), Math.round(track.food(due).surface()));
    return new Warmth(dish.name(), new Window(when, new Clock(plan.event().calendar())),
        points(track, when, TemperatureProfile::middle), points(track, when, TemperatureProfile::surface),
        new Goal(dish.arrives(), room), due - when.from(), told);
  }

  private static String points(Track track, Stretch when, ToDoubleFunction<TemperatureProfile> warm) {
    StringBuilder points = new StringBuilder();
    for (int minute = when.from(); minute <= when.to(); minute += STEP) {
      double down = HOTTEST - warm.applyAsDouble(track.food(minute));
      points.append(minute - when.from()).append(',').append(Math.round(10 * down) / 10.0).append(' ');
    }
    return points.toString().strip();
  }

  /** How far down a temperature is, in percent. */
  public static String down(double celsius) {
    return String.format(Locale.ROOT, "%.2f%%", 100 * (HOTTEST - celsius) / (HOTTEST - COLDEST));
  }

  /** Those of the ruler that have room for their letters. */
  public List<Window.Tick> ticks() {
    int apart = window.when().minutes() / ROOM;
    List<Window.Tick> some = new ArrayList<>();
    for (Window.Tick tick : window.ticks()) {
      boolean isClear = some.isEmpty() || tick.minute() - some.getLast().minute() >= apart;
      if (isClear && tick.minute() < window.when().to() - apart) {
        some.add(tick);
      }
    }
    return some;
  }

  /** How high so many kelvins are, in percent. */
  public static String apart(double kelvins) {
    return String.format(Locale.ROOT, "%.2f%%", 100 * kelvins / (HOTTEST - COLDEST));
  }
}
