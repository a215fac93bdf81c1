package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;

/** Cooks are at work from the beginning of what they do to its end, and do one thing at a time, but for loads and unloads of one oven in one breath. */
final class Crew {

  private record Pair(Task one, Task other) {}

  private final Cp cp;
  private final Steps steps;
  private final List<Task> tasks;
  /** By task and cook the choice of each minute to start. */
  private final IdentityHashMap<Task, Map<Cook, Map<Integer, Literal>>> starts = new IdentityHashMap<>();

  private final Map<Pair, Literal> inOneBreath = new LinkedHashMap<>();
  private final Map<Cook, Map<Integer, LinearArgument>> busy = new HashMap<>();

  Crew(Cp cp, Steps steps, List<Task> tasks) {
    this.cp = cp;
    this.steps = steps;
    this.tasks = tasks;
    tasks.forEach(task -> starts.put(task, starts(task)));
    for (Task one : tasks) {
      for (Task other : tasks) {
        breath(one, other);
      }
    }
    for (Cook cook : steps.event().cooks()) {
      for (int minute = cp.from(); minute < cp.to(); minute++) {
        oneThing(cook, minute);
      }
    }
  }

  /** The choice of two doings at one oven in one breath, or false where there is none. */
  Literal inOneBreath(Task one, Task other) {
    Literal breath = inOneBreath.getOrDefault(new Pair(one, other), inOneBreath.get(new Pair(other, one)));
    return breath == null ? cp.model().falseLiteral() : breath;
  }

  /** 1 if a cook is busy at a minute with anything but serving. */
  LinearArgument busy(Cook cook, int minute) {
    Map<Integer, LinearArgument> own = busy.computeIfAbsent(cook, each -> new HashMap<>());
    return own.computeIfAbsent(minute, at -> busy(at, cook));
  }

  private Map<Cook, Map<Integer, Literal>> starts(Task task) {
    Map<Cook, Map<Integer, Literal>> all = new LinkedHashMap<>();
    task.by().forEach((cook, does) -> {
      Map<Integer, Literal> own = starts(cook, task);
      cp.equal(Cp.sum(own.values()), does);
      all.put(cook, own);
    });
    return all;
  }

  private Map<Integer, Literal> starts(Cook cook, Task task) {
    Map<Integer, Literal> own = new TreeMap<>();
    Stretches free = new Stretches(cook.hours()).without(new Stretches(cook.breaks()));
    for (int minute = task.window().from(); minute + task.minutes() <= task.window().to(); minute++) {
      if (free.encloses(new Stretch(minute, minute + task.minutes()))) {
        BoolVar then = cp.choice("starts at " + minute);
        cp.model().addEquality(task.start(), minute).onlyEnforceIf(then);
        own.put(minute, then);
      }
    }
    return own;
  }

  /** The choices by which a cook is at a task at a minute. */
  private List<Literal> covers(Task task, Cook cook, int minute) {
    Map<Integer, Literal> own = starts.getOrDefault(task, Map.of()).getOrDefault(cook, Map.of());
    return IntStream.rangeClosed(minute - task.minutes() + 1, minute)
        .mapToObj(own::get)
        .filter(Objects::nonNull)
        .toList();
  }

  private void breath(Task one, Task other) {
    Bake bake = one.bake();
    Bake another = other.bake();
    if (bake == null || another == null || !one.isAtTheDoor() || !other.isAtTheDoor()
        || bake.step().index() >= another.step().index() || one.minutes() != other.minutes()) {
      return;
    }
    BoolVar breath = cp.choice("in one breath");
    cp.equal(one.start(), other.start(), breath);
    for (Oven oven : steps.event().kitchen().ovens()) {
      cp.equal(bake.in(oven), another.in(oven), breath);
    }
    one.by()
        .forEach(
            (cook, does) -> cp.equal(does, Objects.requireNonNull(other.by().get(cook)), breath));
    inOneBreath.put(new Pair(one, other), breath);
  }

  private void oneThing(Cook cook, int minute) {
    List<Literal> work = new ArrayList<>();
    List<Task> doors = new ArrayList<>();
    for (Task task : tasks) {
      List<Literal> covers = covers(task, cook, minute);
      if (!task.isAtTheDoor()) {
        work.addAll(covers);
      } else if (!covers.isEmpty()) {
        doors.add(task);
      }
    }
    cp.model().addAtMostOne(work);
    for (int i = 0; i < doors.size(); i++) {
      List<Literal> with = new ArrayList<>(work);
      with.addAll(covers(doors.get(i), cook, minute));
      cp.model().addAtMostOne(with);
      for (int j = 0; j < i; j++) {
        LinearExprBuilder both = LinearExpr.newBuilder();
        covers(doors.get(i), cook, minute).forEach(both::add);
        covers(doors.get(j), cook, minute).forEach(both::add);
        both.addTerm(inOneBreath(doors.get(i), doors.get(j)), -1);
        cp.atMost(both, 1);
      }
    }
  }

  private LinearArgument busy(int minute, Cook cook) {
    List<Literal> work = new ArrayList<>();
    List<List<Literal>> doors = new ArrayList<>();
    for (Task task : tasks) {
      List<Literal> covers = task.isServing() ? List.of() : covers(task, cook, minute);
      if (!task.isAtTheDoor()) {
        work.addAll(covers);
      } else if (!covers.isEmpty()) {
        doors.add(covers);
      }
    }
    if (doors.isEmpty()) {
      return Cp.sum(work);
    }
    IntVar busy = cp.number(0, 1, cook.name() + " is busy");
    for (List<Literal> door : doors) {
      List<Literal> with = new ArrayList<>(work);
      with.addAll(door);
      cp.atMost(Cp.sum(with), busy);
    }
    return busy;
  }

  /** Minutes of all cooks at anything but serving; what is done in one breath counts once. */
  LinearArgument minutes() {
    LinearExprBuilder minutes = LinearExpr.newBuilder();
    for (Task task : tasks) {
      if (!task.isServing()) {
        Literal isDone = task.isDone();
        if (isDone == null) {
          minutes.add((long) task.minutes() * task.cooks());
        } else {
          minutes.addTerm(isDone, task.minutes());
        }
        minutes.addTerm(isWithAnEarlier(task), -task.minutes());
      }
    }
    return minutes;
  }

  private Literal isWithAnEarlier(Task task) {
    List<Literal> with = new ArrayList<>();
    inOneBreath.forEach((pair, breath) -> {
      if (pair.other.equals(task)) {
        with.add(breath);
      }
    });
    return cp.any(with);
  }
}
