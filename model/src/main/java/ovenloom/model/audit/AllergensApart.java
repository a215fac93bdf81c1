package ovenloom.model.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.safety.Allergens;

/** On each day, work free of an allergen comes before work on what contains it, or after all of a clean down. */
record AllergensApart() implements KitchenRule {

  /**
   * @param has allergens that it leaves on board and knife
   * @param sparing those that must not be there
   */
  private record Job(String who, Stretch when, Set<String> has, Set<String> sparing) {

    String shared(Job other) {
      Set<String> shared = new TreeSet<>(sparing);
      shared.retainAll(other.has);
      return String.join(" and ", shared);
    }
  }

  @Override
  public String id() {
    return "allergens apart";
  }

  @Override
  public String sentence() {
    return "On each day, work free of an allergen comes before work on what contains it, or after all of a clean down.";
  }

  @Override
  public List<Break> check(Case plan) {
    if (plan.event().dishes().stream().allMatch(dish -> Allergens.keptOutOf(dish.tags()).isEmpty())) {
      return List.of();
    }
    List<Job> jobs = jobs(plan);
    List<Stretch> cleanDowns = cleanDowns(plan);
    List<Break> breaks = new ArrayList<>();
    for (Job clean : jobs) {
      for (Job other : jobs) {
        String shared = clean.shared(other);
        if (!shared.isEmpty()
            && !isInOrder(plan.event().calendar(), clean.when(), other.when(), cleanDowns)) {
          breaks.add(Break.of(this, List.of(clean.who(), other.who()), clean.when(),
              clean.when().to() - other.when().from(), Break.Unit.MINUTES,
              clean.who() + " must be free of " + shared + ", and comes after " + other.who()
                  + " with no clean down between"));
        }
      }
    }
    return breaks.stream().distinct().toList();
  }

  private static boolean isInOrder(Calendar calendar, Stretch clean, Stretch other,
      List<Stretch> cleanDowns) {
    return clean.to() <= other.from()
        || last(calendar, other).isBefore(first(calendar, clean))
        || cleanDowns.stream().anyMatch(each -> other.to() <= each.from() && each.to() <= clean.from());
  }

  private static LocalDate first(Calendar calendar, Stretch when) {
    return calendar.at(when.from()).toLocalDate();
  }

  private static LocalDate last(Calendar calendar, Stretch when) {
    return calendar.at(Math.max(when.from(), when.to() - 1)).toLocalDate();
  }

  private static List<Job> jobs(Case plan) {
    List<Set<String>> has = had(plan);
    List<Set<String>> sparing = spared(plan);
    List<Job> jobs = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      Set<String> leaves = new TreeSet<>();
      Set<String> spares = new TreeSet<>();
      for (BatchStep step : plan.steps(run)) {
        leaves.addAll(has.get(step.index()));
        spares.addAll(sparing.get(step.index()));
      }
      for (HandsOn hands : run.hands()) {
        if (hands.act() == Act.WORK) {
          jobs.add(new Job(plan.name(run), hands.when(), leaves, spares));
        }
      }
    }
    return jobs;
  }

  /** For each step: what its dish has, or what goes into it. Steps come after all they link to. */
  private static List<Set<String>> had(Case plan) {
    List<Set<String>> all = new ArrayList<>();
    for (BatchStep step : plan.work().steps()) {
      Set<String> has = new TreeSet<>(Allergens.in(step.dish().tags()));
      plan.work()
          .into(step.index())
          .stream()
          .filter(BatchLink::carriesFood)
          .forEach(link -> has.addAll(all.get(link.from())));
      all.add(has);
    }
    return all;
  }

  /** For each step: what its dish must be free of, or what it goes into. */
  private static List<Set<String>> spared(Case plan) {
    List<Set<String>> all = new ArrayList<>();
    plan.work().steps().forEach(step -> all.add(new TreeSet<>(Allergens.keptOutOf(step.dish().tags()))));
    for (BatchStep step : plan.work().steps().reversed()) {
      plan.work()
          .into(step.index())
          .stream()
          .filter(BatchLink::carriesFood)
          .forEach(link -> all.get(link.from()).addAll(all.get(step.index())));
    }
    return all;
  }

  /** Each chore that cleans down, from its first step's beginning to its last one's end. */
  private static List<Stretch> cleanDowns(Case plan) {
    List<Stretch> all = new ArrayList<>();
    for (Dish dish : plan.event().dishes()) {
      List<Stretch> runs = plan.plan()
          .placements()
          .stream()
          .filter(run -> run.dish().equals(dish.name()))
          .map(Placement::when)
          .toList();
      if (!dish.food() && Allergens.areCleanedAwayBy(dish.tags()) && !runs.isEmpty()) {
        all.add(new Stretch(runs.stream().mapToInt(Stretch::from).min().orElseThrow(),
            runs.stream().mapToInt(Stretch::to).max().orElseThrow()));
      }
    }
    return all;
  }
}
