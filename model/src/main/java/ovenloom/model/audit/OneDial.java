package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.measure.Stretch;

/** What is in an oven together is at one mark: the oven has only one dial. */
record OneDial() implements KitchenRule {

  @Override
  public String id() {
    return "one dial";
  }

  @Override
  public String sentence() {
    return "What is in an oven together is at one mark: the oven has only one dial.";
  }

  /**
   * Where every minute is at one mark, food that is inside across a turn of the dial has its own change then, so only
   * turns over waiting food are left to look for.
   */
  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    OvenUse.of(plan).forEach((oven, uses) -> {
      for (int i = 0; i < uses.size(); i++) {
        for (OvenUse other : uses.subList(i + 1, uses.size())) {
          checkTogether(oven, uses.get(i), other, breaks);
          checkLeftAlone(oven, uses.get(i), other, breaks);
        }
      }
    });
    return breaks;
  }

  private void checkTogether(String oven, OvenUse one, OvenUse other, List<Break> breaks) {
    Stretch shared = one.when().shared(other.when());
    if (shared != null && !one.sharesTheDial(other)) {
      breaks.add(Break.of(this, List.of(oven, one.who(), other.who()), shared, shared.minutes(),
          Unit.MINUTES, one.setting() + " and " + other.setting() + " for " + shared.minutes() + " min"));
    }
  }

  private void checkLeftAlone(String oven, OvenUse one, OvenUse other, List<Break> breaks) {
    if (one.waits() && one.goesOnAs(other) && !one.sharesTheDial(other)) {
      breaks.add(Break.of(this, List.of(oven, one.who()), other.when(), 1, Unit.TIMES,
          "the dial is turned from " + one.setting() + " to " + other.setting() + " over food that waits"));
    }
  }
}
