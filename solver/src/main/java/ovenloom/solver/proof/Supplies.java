package ovenloom.solver.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Need;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;

/**
 * What the kitchen has of each thing and what the menu asks of it. What is hard to say is left out or made easier, never harder:
 * doors, moments that slip, what closes or is taken, dials, how pans fit on a rack.
 */
final class Supplies {

  private final Event event;
  private final Areas areas;
  private final Extents extents;

  Supplies(Event event, Extents extents) {
    this.event = event;
    areas = new Areas(extents.laidOut().work());
    this.extents = extents;
  }

  List<Supply> all() {
    List<Supply> all = new ArrayList<>(List.of(hands(null)));
    skills(event).forEach(skill -> all.add(hands(skill)));
    List.of(BurnerSize.values()).reversed().forEach(size -> all.add(burners(size)));
    event.kitchen().appliances().forEach(appliance -> all.add(appliance(appliance)));
    all.add(racks());
    all.removeIf(supply -> supply.tasks().isEmpty());
    return all;
  }

  static Set<String> skills(Event event) {
    Set<String> skills = new TreeSet<>();
    event.cooks().forEach(cook -> skills.addAll(cook.skills()));
    return skills;
  }

  /** Of cooks in hours and at no break; of those with a skill, for what wants it. */
  private Supply hands(@Nullable String skill) {
    List<Task> tasks = new ArrayList<>();
    for (List<Run> group : groups(run -> true)) {
      for (Need.Hands need : group.getFirst().step().hands()) {
        if (skill == null || skill.equals(need.skill())) {
          tasks.addAll(tasks(group, need, skill == null ? need.cooks() : 1));
        }
      }
    }
    List<Stretches> hours = event.cooks()
        .stream()
        .filter(cook -> skill == null || cook.skills().contains(skill))
        .map(Supplies::atWork)
        .toList();
    String what = skill == null ? "hands" : "hands for " + skill;
    return new Supply(Clash.Kind.MINUTES, what, tasks, (from, to) -> hours.stream()
        .mapToLong(each -> each.shared(Stretches.of(new Stretch(from, to))).minutes())
        .sum());
  }

  private static Stretches atWork(Cook cook) {
    return new Stretches(cook.hours()).without(new Stretches(cook.breaks()));
  }

  private List<Task> tasks(List<Run> group, Need.Hands need, int cooks) {
    int least = extents.least(group.getFirst().index());
    int minutes = switch (need.moment()) {
      case Need.Moment.Throughout() -> least;
      case Need.Moment.First(int some) -> some;
      case Need.Moment.Last(int some) -> some;
      case Need.Moment.At(int after, int some, boolean sharp) -> some;
    };
    int before = need.moment() instanceof Need.Moment.Last ? least - minutes : 0;
    int after = need.moment() instanceof Need.Moment.First ? least - minutes : 0;
    return shared(group, before, after, minutes, cooks);
  }

  /**
   * As many as the runs that its batches need at least, anywhere between the first minute of any and the last of any.
   *
   * @param before minutes that a run goes on before it at least
   * @param after likewise after it
   */
  private List<Task> shared(List<Run> group, int before, int after, int minutes, int amount) {
    Run first = group.getFirst();
    int earliest = group.stream().mapToInt(run -> extents.earliest(run.index())).min().orElseThrow();
    int latest = group.stream().mapToInt(run -> extents.latest(run.index())).max().orElseThrow();
    int runs = Math.ceilDiv(group.size(), first.step().together().most());
    BatchStep step = first.units().getFirst();
    return Collections.nCopies(runs, new Task(step, earliest + before, latest - after, minutes, amount));
  }

  private Supply burners(BurnerSize size) {
    List<Task> tasks = new ArrayList<>();
    for (Run run : extents.runs()) {
      Need.OnBurner need = run.step().burner();
      boolean isAlone = !run.step().together().oneVessel();
      if (need != null && isAlone && need.atLeast().compareTo(size) >= 0) {
        tasks.add(task(run, Math.max(1, run.pieces().size())));
      }
    }
    long count = event.kitchen().burners().stream().filter(each -> each.size().compareTo(size) >= 0).count();
    return Supply.of(name(size), tasks, count);
  }

  static String name(BurnerSize size) {
    return size == BurnerSize.SMALL ? "burners" : size.name().toLowerCase(Locale.ROOT) + " burners";
  }

  private Supply appliance(Appliance appliance) {
    List<Task> tasks = new ArrayList<>();
    for (List<Run> group : groups(run -> isAt(run, appliance))) {
      tasks.addAll(shared(group, 0, 0, extents.least(group.getFirst().index()), 1));
    }
    return Supply.of("the " + appliance.name(), tasks, (long) appliance.count() * appliance.places());
  }

  static boolean isAt(Run run, Appliance appliance) {
    return run.step().appliances().stream().anyMatch(need -> need.appliance().equals(appliance.name()));
  }

  /** By area, of pans with a size: what lies on a rack covers that much of it. */
  private Supply racks() {
    List<Task> tasks = new ArrayList<>();
    for (Run run : extents.runs()) {
      boolean isAlone = !run.step().together().oneVessel();
      long area = run.step().bake() == null || !isAlone ? 0 : areas.of(run);
      if (area > 0) {
        tasks.add(task(run, area));
      }
    }
    long there = event.kitchen()
        .ovens()
        .stream()
        .flatMap(oven -> oven.racks().stream())
        .mapToLong(rack -> Areas.of(rack.width(), rack.depth()))
        .sum();
    return new Supply(Clash.Kind.ROOM, "the oven racks", tasks, (from, to) -> there * (to - from));
  }

  private Task task(Run run, long amount) {
    int i = run.index();
    return new Task(run.units().getFirst(), extents.earliest(i), extents.latest(i), extents.least(i), amount);
  }

  private Collection<List<Run>> groups(Predicate<Run> which) {
    return BatchesOf.steps(extents.runs().stream().filter(which).toList());
  }
}
