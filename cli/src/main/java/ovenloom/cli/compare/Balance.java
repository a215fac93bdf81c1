package ovenloom.cli.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.sheet.Words;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;
import ovenloom.model.variation.Standing;

/** What a change saves and what it costs, the most telling first; what is hardly worth saying is left out. */
final class Balance {

  private static final int MINUTES = 5;
  private static final int TENTHS_OF_A_DEGREE = 10;
  private static final int TENTHS_OF_A_KWH = 3;
  private static final int POINTS = 10;

  private final List<String> saves = new ArrayList<>();
  private final List<String> costs = new ArrayList<>();

  private Balance() {}

  /** In a sentence: of one, beside the first. */
  static String sentence(Contender first, Contender other) {
    Planned before = first.planned();
    Planned after = other.planned();
    if (before != null && after != null) {
      return new Balance().of(before, after).sentence();
    }
    if (after != null) {
      return "It buys a plan: with " + first.name() + " there is none"
          + (first.standing() instanceof Standing.NoPlan ? ", proven." : " that was found.");
    }
    return before == null ? "It buys no plan either." : "";
  }

  private Balance of(Planned first, Planned other) {
    Figures before = first.figures();
    Figures after = other.figures();
    if (before.onTheDay() >= 0 && after.onTheDay() >= 0
        && first.plan().event().courses().equals(other.plan().event().courses())) {
      change(after.onTheDay() - before.onTheDay(), MINUTES, "min on the day");
    }
    atTheTable(first.plan(), other.plan());
    change(before.handsInTheLastHour() - after.handsInTheLastHour(), MINUTES,
        "min of hands in the last hour");
    energy(before.energy() - after.energy());
    if (first.plan().event().wishes().equals(other.plan().event().wishes())) {
      change(first.plan().score().wishes() - other.plan().score().wishes(), POINTS, "points of wishes");
    }
    return this;
  }

  private void change(long saved, int worthSaying, String unit) {
    if (Math.abs(saved) >= worthSaying) {
      side(saved).add(Rows.grouped(Math.abs(saved)) + " " + unit);
    }
  }

  private List<String> side(long saved) {
    return saved > 0 ? saves : costs;
  }

  private void energy(long saved) {
    if (Math.abs(saved) >= TENTHS_OF_A_KWH) {
      side(saved).add(Rows.energy(Math.abs(saved)));
    }
  }

  /** Of the dishes of both that lose less, the one that does by most; and of those that lose more. */
  private void atTheTable(Plan before, Plan after) {
    Map<String, Long> lost = Astray.tenths(before);
    Map<String, Long> now = Astray.tenths(after);
    Map<String, Long> saved = new TreeMap<>();
    before.event()
        .dishes()
        .stream()
        .map(Dish::name)
        .filter(after.event().dishes().stream().map(Dish::name).toList()::contains)
        .forEach(dish -> saved.put(dish, lost.getOrDefault(dish, 0L) - now.getOrDefault(dish, 0L)));
    saved.entrySet()
        .stream()
        .filter(each -> each.getValue() >= TENTHS_OF_A_DEGREE)
        .max(Map.Entry.comparingByValue())
        .ifPresent(most -> saves.add(words(most)));
    saved.entrySet()
        .stream()
        .filter(each -> each.getValue() <= -TENTHS_OF_A_DEGREE)
        .min(Map.Entry.comparingByValue())
        .ifPresent(least -> costs.add(words(least)));
  }

  private static String words(Map.Entry<String, Long> dish) {
    return Astray.words(Math.abs(dish.getValue())) + " at the table (" + dish.getKey() + ")";
  }

  private String sentence() {
    String buys = saves.isEmpty() ? "It buys nothing worth saying" : "It saves " + Words.and(saves);
    return buys + (costs.isEmpty() ? "" : ", and costs " + Words.and(costs)) + ".";
  }
}
