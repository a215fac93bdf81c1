package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;

/** Whatever takes hands has them, of someone who can, in their hours and from end to end. */
record Hands() implements KitchenRule {

  @Override
  public String id() {
    return "hands";
  }

  @Override
  public String sentence() {
    return "Whatever takes hands has them, of someone who can, in their hours and from end to end.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      run.hands().forEach(each -> hours(plan, plan.name(run), each.when(), each.cooks(), breaks));
      if (!plan.steps(run).isEmpty()) {
        compare(plan, plan.name(run), HandsNeeded.by(plan, run), run.hands(), breaks);
      }
    }
    for (Stay stay : plan.plan().stays()) {
      stay.hands().forEach(each -> hours(plan, plan.name(stay), each.when(), each.cooks(), breaks));
      if (!plan.steps(stay).isEmpty()) {
        compare(plan, plan.name(stay), HandsNeeded.by(plan, stay), stay.hands(), breaks);
      }
    }
    for (Wash wash : plan.plan().washes()) {
      hours(plan, "washing of " + wash.vessel(), wash.when(), List.of(wash.cook()), breaks);
    }
    return breaks;
  }

  private void compare(Case plan, String who, List<HandsNeeded> needed, List<HandsOn> given,
      List<Break> breaks) {
    for (Act act : Act.values()) {
      List<HandsNeeded> these = needed.stream().filter(each -> each.act() == act).toList();
      List<HandsOn> those = given.stream().filter(each -> each.act() == act).toList();
      if (these.size() != those.size()) {
        String what = those.isEmpty() ? nobody(act)
            : act.name().toLowerCase(Locale.ROOT) + " " + those.size() + " times, not " + these.size();
        breaks.add(Break.of(this, List.of(who), null, Math.abs(these.size() - those.size()), Break.Unit.TIMES,
            what));
      }
      for (int i = 0; i < Math.min(these.size(), those.size()); i++) {
        compare(plan, who, these.get(i), those.get(i), breaks);
      }
    }
    if (!given.stream()
        .map(HandsOn::act)
        .sorted()
        .toList()
        .equals(given.stream().map(HandsOn::act).toList())) {
      breaks.add(
          Break.of(this, List.of(who), null, 1, Break.Unit.TIMES, "load, work and unload are out of order"));
    }
  }

  private static String nobody(Act act) {
    return switch (act) {
      case LOAD -> "nobody puts it in";
      case WORK -> "nobody has hands for it";
      case UNLOAD -> "nobody takes it out";
    };
  }

  private void compare(Case plan, String who, HandsNeeded needed, HandsOn given, List<Break> breaks) {
    int off = needed.off(given);
    if (off > 0) {
      String what = "hands for " + needed.when().minutes() + " min are " + off + " min off";
      breaks.add(Break.of(this, List.of(who), given.when(), off, Break.Unit.MINUTES, what));
    }
    Set<String> cooks = new TreeSet<>(given.cooks());
    if (cooks.size() != needed.cooks()) {
      String what = "it takes " + needed.cooks() + " of " + cooks;
      breaks.add(cooks(who, given.when(), Math.abs(cooks.size() - needed.cooks()), what));
    }
    String skill = needed.skill();
    if (skill != null && cooks.stream().noneMatch(name -> has(cook(plan, name), skill))) {
      breaks.add(cooks(who, given.when(), 1, "none of " + cooks + " is skilled in " + skill));
    }
  }

  private static boolean has(@Nullable Cook cook, String skill) {
    return cook != null && cook.skills().contains(skill);
  }

  private void hours(Case plan, String who, Stretch when, List<String> names, List<Break> breaks) {
    for (String name : new TreeSet<>(names)) {
      Cook cook = cook(plan, name);
      if (cook == null) {
        breaks.add(cooks(who, when, 1, "there is no cook \"" + name + "\""));
        continue;
      }
      Stretches working = new Stretches(cook.hours()).without(new Stretches(cook.breaks()));
      long out = Stretches.of(when).without(working).minutes();
      if (out > 0) {
        breaks.add(Break.of(this, List.of(who, name), when, out, Break.Unit.MINUTES,
            name + " is not at work for " + out + " min of it"));
      }
    }
  }

  private Break cooks(String who, Stretch when, int off, String what) {
    return Break.of(this, List.of(who), when, off, Break.Unit.COOKS, what);
  }

  private static @Nullable Cook cook(Case plan, String name) {
    for (Cook cook : plan.event().cooks()) {
      if (cook.name().equals(name)) {
        return cook;
      }
    }
    return null;
  }
}
