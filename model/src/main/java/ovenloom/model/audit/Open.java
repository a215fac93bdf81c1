package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.measure.Stretch;

/** Nothing is used outside its hours, or while somebody else has it. */
record Open() implements KitchenRule {

  private record Fault(String thing, Availability open, String words) {}

  @Override
  public String id() {
    return "open";
  }

  @Override
  public String sentence() {
    return "Nothing is used outside its hours, or while somebody else has it.";
  }

  @Override
  public List<Break> check(Case plan) {
    Map<Fault, Counted> faults = new LinkedHashMap<>();
    for (Used used : Used.of(plan)) {
      note(used, "is shut", shut(used), faults);
      if (!used.isOneOfSeveral()) {
        note(used, "is somebody else's", taken(used), faults);
      }
    }
    List<Break> breaks = new ArrayList<>();
    faults.forEach((fault, uses) -> uses.shortfalls().forEach(each -> breaks.add(broken(fault, each))));
    return breaks;
  }

  /** Uses of one thing that overlap or touch are one break. */
  private static void note(Used used, String words, List<Stretch> when, Map<Fault, Counted> faults) {
    Fault fault = new Fault(used.thing(), used.open(), words);
    when.forEach(each -> faults.computeIfAbsent(fault, none -> new Counted(0)).take(each, 1, used.who()));
  }

  /** What of a use lies outside the hours; no hours are all hours. */
  private static List<Stretch> shut(Used used) {
    if (used.open().hours().isEmpty()) {
      return List.of();
    }
    List<Stretch> left = List.of(used.when());
    for (Stretch hours : used.open().hours()) {
      left = left.stream().flatMap(each -> without(each, hours).stream()).toList();
    }
    return left;
  }

  private static List<Stretch> without(Stretch whole, Stretch hours) {
    if (!whole.overlaps(hours)) {
      return List.of(whole);
    }
    List<Stretch> rest = new ArrayList<>();
    if (whole.from() < hours.from()) {
      rest.add(new Stretch(whole.from(), hours.from()));
    }
    if (hours.to() < whole.to()) {
      rest.add(new Stretch(hours.to(), whole.to()));
    }
    return rest;
  }

  private static List<Stretch> taken(Used used) {
    List<Stretch> taken = new ArrayList<>();
    for (Availability.Taken others : used.open().taken()) {
      Stretch shared = others.when().shared(used.when());
      if (shared != null) {
        taken.add(shared);
      }
    }
    return taken;
  }

  private Break broken(Fault fault, Counted.Shortfall each) {
    List<String> who = new ArrayList<>(List.of(fault.thing()));
    each.who().stream().filter(name -> !name.equals(fault.thing())).forEach(who::add);
    int minutes = each.when().minutes();
    return Break.of(this, who, each.when(), minutes, Unit.MINUTES,
        fault.words() + " for " + minutes + " min of it");
  }
}
