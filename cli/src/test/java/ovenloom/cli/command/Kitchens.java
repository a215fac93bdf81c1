package ovenloom.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.file.PlanFile;
import ovenloom.model.file.Reading;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** Problems and plans in files, for commands to read. */
public final class Kitchens {

  static final Path SOUP = Path.of("../problems/first-soup.yaml");

  private Kitchens() {}

  /** One pair of hands, half an hour, and three quarters of an hour of work that must all be fresh. */
  static Path tooMuchForOne(Path folder) throws IOException {
    return Files.writeString(folder.resolve("too-much.yaml"), """
        ovenloom: 1
        event: Too much
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {on the day: 18:30-19:30}}]
        dishes:
          - dish: Omelette
            steps: [{do: fry, takes: 25 min, hands: throughout}]
          - dish: Pancakes
            steps: [{do: fry, takes: 20 min, hands: throughout}]
        """);
  }

  /** One oven, and two bakes of one evening, one cool and one hot, that must both be fresh. */
  static Path twoMarksAtOnce(Path folder) throws IOException {
    return Files.writeString(folder.resolve("two-marks.yaml"), """
        ovenloom: 1
        event: Two marks
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {on the day: 15:00-19:30}}]
        dishes:
          - dish: Meringue
            steps: [{do: bake, takes: 60 min, in: baking tray, bake: {at: 100 C}}]
          - dish: Pizza
            steps: [{do: bake, takes: 30 min, in: baking tray, bake: {at: 250 C}}]
        """);
  }

  /** One shelf, and raw chicken on it that may not stand beside a jelly: what no proof sees, since what is raw is in none. */
  public static Path rawBesideReady(Path folder) throws IOException {
    return Files.writeString(folder.resolve("one-shelf.yaml"), """
        ovenloom: 1
        event: One shelf
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        kitchen:
          burners: [large]
          cold: [{name: fridge, holds: 4 C, shelves: [{size: 60 x 40 x 30 cm}]}]
          vessels: {pan: 1, bowl: {count: 2, size: 20 x 20 x 10 cm}}
        cooks: [{name: Host, hours: {on the day: 12:00-19:30}}]
        dishes:
          - dish: Chicken
            tags: [raw poultry]
            steps:
              - {do: marinate, takes: 60 min, cold: fridge, in: bowl}
              - {do: fry, takes: 30 min, hands: throughout, burner: large, in: pan, core: 74 C}
          - dish: Jelly
            arrives: cool
            tags: [not tcs]
            steps: [{do: set, takes: 3 h, cold: fridge, in: bowl}]
        """);
  }

  /** A roast of two hours, and a cook who comes home an hour before supper. */
  static Path tooLateToBegin(Path folder) throws IOException {
    return Files.writeString(folder.resolve("too-late.yaml"), """
        ovenloom: 1
        event: Too late
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {on the day: 18:00-19:30}}]
        dishes:
          - dish: Roast
            steps: [{do: roast, takes: 2 h, in: roasting tin, bake: {at: 180 C}, unattended: yes}]
        """);
  }

  /** Soup that may wait in a fridge the pot does not fit into. */
  static Path potTooTallForTheFridge(Path folder) throws IOException {
    return Files.writeString(folder.resolve("tall.yaml"), """
        ovenloom: 1
        event: A tall pot
        guests: 4
        courses: [{name: supper, at: 2026-10-10 19:00}]
        cooks: [{name: Host, hours: {on the day: 18:00-19:30}}]
        kitchen:
          burners: [large]
          cold: [{name: wine fridge, holds: 10 C, shelves: {size: 40 x 30 x 10 cm}}]
          vessels: {stock pot: 1}
        dishes:
          - dish: Soup
            steps: [{do: simmer, takes: 30 min, burner: large, in: stock pot,
              keeps: {wine fridge: 2 days, counter: 20 min}}]
        """);
  }

  /** A plan for soup, found and written. */
  static Path aPlan(Path folder) {
    Path file = folder.resolve("plan.json");
    Typed typed = Typed.ovenloom("solve", SOUP, "--tries", 20, "-o", file);
    if (typed.code() != 0) {
      throw new AssertionError(typed.err());
    }
    return file;
  }

  /** A plan for one of the sample problems. */
  public static Plan sample(String problem, int tries, Path folder) {
    Path file = folder.resolve(problem + ".json");
    Typed typed = Typed.ovenloom("solve", "../problems/" + problem + ".yaml", "--tries", tries, "-o", file);
    if (typed.code() != 0) {
      throw new AssertionError(typed.err());
    }
    return read(file);
  }

  /** The plan for soup with its last run ten minutes later, past the table time. */
  static Path aPlanThatIsLate(Path folder) throws IOException {
    Plan plan = read(aPlan(folder));
    List<Placement> runs = new ArrayList<>(plan.placements());
    Placement last = runs.removeLast();
    runs.add(new Placement(last.dish(), last.step(), last.batches(), last.when().shiftedBy(10), last.baking(),
        last.burners(), last.shelves(), last.hands()));
    Path file = folder.resolve("late.json");
    return Files.writeString(file, PlanFile.json(new Plan(plan.event(), plan.sources(), runs, plan.stays(),
        plan.ovens(), plan.washes(), plan.layouts(), plan.score())));
  }

  static Plan read(Path file) {
    return switch (PlanFile.read(file)) {
      case Reading.Understood<Plan>(Plan plan, var sources, var notes) -> plan;
      case Reading.Mistaken<Plan>(var mistakes) -> throw new AssertionError(mistakes);
    };
  }
}
