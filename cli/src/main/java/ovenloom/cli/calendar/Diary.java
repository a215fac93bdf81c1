package ovenloom.cli.calendar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.calendar.Slot.Doing;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Acts;
import ovenloom.model.life.Life;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Course;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/**
 * All that is to be done for a plan, as entries of a calendar: each stretch of work one, each course one, and one for what takes no
 * minutes and falls into neither.
 */
final class Diary {

  /** Acts that no stretch tells, and whose they are. */
  private record Moment(int at, List<String> cooks) {}

  private final Plan plan;
  private final List<Stint> stints;
  private final Map<Slot, Set<Act>> inStints = new LinkedHashMap<>();
  private final Map<Slot, List<Act>> starts = new LinkedHashMap<>();
  private final Map<Course, List<Act>> atTheTable = new LinkedHashMap<>();
  private final Map<Moment, List<Act>> moments = new LinkedHashMap<>();

  private Diary(Plan plan) {
    this.plan = plan;
    this.stints = Stints.of(plan);
  }

  /**
   * In the order of time.
   *
   * @param cook whose; null for all
   */
  static List<Entry> of(Plan plan, @Nullable String cook) {
    Diary diary = new Diary(plan);
    Acts.of(plan, Life.of(plan, 1)).forEach(diary::tell);
    return numbered(diary.entries().stream().filter(entry -> cook == null || entry.isOf(cook)).toList());
  }

  private void tell(Act act) {
    Course course = course(act);
    if (course != null) {
      atTheTable.computeIfAbsent(course, none -> new ArrayList<>()).add(act);
      return;
    }
    List<String> others = new ArrayList<>(act.cooks());
    others.removeIf(cook -> isToldInAStint(act, cook));
    if (!others.isEmpty() || act.cooks().isEmpty()) {
      tellAlone(act, others);
    }
  }

  private @Nullable Course course(Act act) {
    return plan.event()
        .courses()
        .stream()
        .filter(course -> course.at() == act.at())
        .filter(course -> switch (act.turn()) {
          case TABLE -> course.name().toUpperCase(Locale.ROOT).equals(act.thing());
          case SERVE -> act.step() != null && act.step().dish().course().equals(course.name());
          case PROBE, OUT, FETCH, ACROSS, DIAL, INTO_OVEN, IN, WORK, WAIT, BY_ITSELF, OFF, WASH -> false;
        })
        .findFirst()
        .orElse(null);
  }

  private boolean isToldInAStint(Act act, String cook) {
    Stint nearest = stints.stream()
        .filter(stint -> stint.distance(act, cook) < Stint.NOT_HERE)
        .min(Comparator.comparingInt(stint -> stint.distance(act, cook)))
        .orElse(null);
    if (nearest != null) {
      inStints.computeIfAbsent(nearest.slot(), none -> new LinkedHashSet<>()).add(act);
    }
    return nearest != null;
  }

  private void tellAlone(Act act, List<String> cooks) {
    BatchStep step = act.step();
    if (step != null && beginsByItself(step, act.at())) {
      Slot slot = Slot.of(Doing.START, act.thing(), step.step().name(), step.batches(), 1);
      starts.computeIfAbsent(slot, none -> new ArrayList<>()).add(act);
    } else {
      moments.computeIfAbsent(new Moment(act.at(), cooks), none -> new ArrayList<>()).add(act);
    }
  }

  private boolean beginsByItself(BatchStep step, int at) {
    Placement run = plan.placement(step.dish().name(), step.step().name(), step.batches().first());
    return run.when().from() == at && run.hands()
        .stream()
        .noneMatch(hands -> hands.act() != HandsOn.Act.UNLOAD && hands.when().from() == at);
  }

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    stints.forEach(stint -> entries
        .add(stint.entry(List.copyOf(inStints.getOrDefault(stint.slot(), Set.of())))));
    starts.forEach((slot, acts) -> entries.add(start(slot, acts)));
    moments.forEach((moment, acts) -> entries.add(new Entry(Slot.moment(1), moment.cooks(),
        aMinute(moment.at()), Entry.headline(acts.getFirst()), acts)));
    atTheTable.forEach((course, acts) -> entries.add(new Entry(Slot.table(course.name()), List.of(),
        new Stretch(course.at(), course.at() + Math.max(1, course.servedOver())),
        course.name() + ": at the table", acts)));
    entries.sort(Comparator.comparingInt(entry -> entry.when().from()));
    return entries;
  }

  private Entry start(Slot slot, List<Act> acts) {
    Act first = acts.getFirst();
    List<String> cooks = acts.stream().flatMap(act -> act.cooks().stream()).distinct().toList();
    Placement run = plan.placement(slot.of(), slot.step(), slot.batch());
    String title = slot.of() + ": " + slot.step() + new Some(plan, slot.of(), slot.step(), run.batches());
    return new Entry(slot, cooks, aMinute(first.at()), title, acts);
  }

  private static Stretch aMinute(int at) {
    return new Stretch(at, at + 1);
  }

  /** Moments have no more to tell them apart by than their order. */
  private static List<Entry> numbered(List<Entry> entries) {
    List<Entry> numbered = new ArrayList<>();
    int moments = 0;
    for (Entry entry : entries) {
      numbered.add(entry.isAMoment() ? entry.in(Slot.moment(++moments)) : entry);
    }
    return numbered;
  }
}
