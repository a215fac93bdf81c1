package ovenloom.cli.page;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * One stretch of time in several plans, one above another on one scale.
 *
 * @param name a word without spaces, for links
 * @param pixels how wide it is on a screen at least
 */
public record Stack(String name, String heading, String pixels, List<Layer> layers) {

  /** It in one plan. */
  public record Layer(String plan, Panel panel) {}

  public Stack {
    layers = List.copyOf(layers);
  }

  /** The last hours of all plans large, and each day of any; none where there is no plan. */
  static List<Stack> of(List<Planned> planned) {
    List<One> all = planned.stream().map(One::of).toList();
    if (all.isEmpty()) {
      return List.of();
    }
    List<Stack> stacks = new ArrayList<>();
    Stretch last = all.stream().map(each -> each.pictures().last()).reduce(Stack::around).orElseThrow();
    stacks.add(of(all, last, "last-hours", "The last hours", Picture.Scale.LARGE.minutePixels()));
    Calendar calendar = all.getFirst().plan().event().calendar();
    days(all).forEach((days, when) -> {
      LocalDate day = calendar.day().plusDays(days);
      stacks.add(
          of(all, when, "day-" + day, new Clock(calendar).heading(day), Picture.Scale.SMALL.minutePixels()));
    });
    return stacks;
  }

  private record One(String name, Plan plan, Pictures pictures) {
    private static One of(Planned planned) {
      return new One(planned.name(), planned.plan(), new Pictures(planned.plan()));
    }

    private Layer layer(Stretch when, double minutePixels) {
      return new Layer(name, Panel.of(plan, pictures.lanes(), when, minutePixels));
    }
  }

  private static Stack of(List<One> all, Stretch when, String name, String heading, double minutePixels) {
    String pixels = String.format(Locale.ROOT, "%.0f", when.minutes() * minutePixels);
    return new Stack(name, heading, pixels,
        all.stream().map(each -> each.layer(when, minutePixels)).toList());
  }

  /** By how many days they come after the day of their event, from the first hour of any plan to the last. */
  private static Map<Long, Stretch> days(List<One> all) {
    Map<Long, Stretch> days = new TreeMap<>();
    for (One each : all) {
      LocalDate theDay = each.plan().event().calendar().day();
      each.pictures()
          .days()
          .forEach((day, when) -> days.merge(ChronoUnit.DAYS.between(theDay, day), when, Stack::around));
    }
    return days;
  }

  private static Stretch around(Stretch one, Stretch other) {
    return new Stretch(Math.min(one.from(), other.from()), Math.max(one.to(), other.to()));
  }
}
