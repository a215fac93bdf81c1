package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Nobody does two things at once, but for what goes in and out through one open oven door. */
record OneThingAtATime() implements KitchenRule {

  /** @param door of the oven that it opens to load or unload; absent for anything else */
  private record Deed(String what, Stretch when, @Nullable String door) {

    boolean isOneOpeningWith(Deed other) {
      return door != null && door.equals(other.door) && when.from() == other.when.from();
    }
  }

  @Override
  public String id() {
    return "one thing at a time";
  }

  @Override
  public String sentence() {
    return "Nobody does two things at once, but for what goes in and out through one open oven door.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    deeds(plan).forEach((cook, deeds) -> {
      deeds.sort(Comparator.comparingInt(deed -> deed.when().from()));
      for (int i = 0; i < deeds.size(); i++) {
        Deed one = deeds.get(i);
        deeds.subList(i + 1, deeds.size())
            .stream()
            .takeWhile(other -> other.when().from() < one.when().to())
            .forEach(other -> check(cook, one, other, breaks));
      }
    });
    return breaks;
  }

  private void check(String cook, Deed one, Deed other, List<Break> breaks) {
    Stretch shared = one.when().shared(other.when());
    if (shared != null && !one.isOneOpeningWith(other)) {
      String what = cook + " does both for " + shared.minutes() + " min";
      breaks.add(Break.of(this, List.of(cook, one.what(), other.what()), shared, shared.minutes(),
          Break.Unit.MINUTES, what));
    }
  }

  private static Map<String, List<Deed>> deeds(Case plan) {
    Map<String, List<Deed>> deeds = new TreeMap<>();
    for (Placement run : plan.plan().placements()) {
      Baking baking = run.baking();
      run.hands().forEach(hands -> add(deeds, plan.name(run), hands, baking == null ? null : baking.oven()));
    }
    for (Stay stay : plan.plan().stays()) {
      stay.hands().forEach(hands -> add(deeds, "waiting of " + plan.name(stay), hands, oven(stay)));
    }
    plan.plan()
        .washes()
        .forEach(wash -> add(deeds, wash.cook(), new Deed("washing of " + wash.vessel(), wash.when(), null)));
    return deeds;
  }

  private static @Nullable String oven(Stay stay) {
    return !stay.parts().isEmpty()
        && stay.parts().getLast().where() instanceof Where.InOven(var oven, var mark) ? oven : null;
  }

  private static void add(Map<String, List<Deed>> deeds, String what, HandsOn hands, @Nullable String oven) {
    Deed deed = new Deed(what, hands.when(), hands.act() == Act.WORK ? null : oven);
    new TreeSet<>(hands.cooks()).forEach(cook -> add(deeds, cook, deed));
  }

  private static void add(Map<String, List<Deed>> deeds, String cook, Deed deed) {
    deeds.computeIfAbsent(cook, name -> new ArrayList<>()).add(deed);
  }
}
