package ovenloom.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.Nearest;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** What people call the runs of a plan: by the dish, by the step, by both, by the batch. */
record Called(Plan plan) {

  /** All that a name means, in the order of their start; small and capital letters are the same. */
  List<Placement> runs(String name) {
    String wanted = small(name);
    return plan.placements()
        .stream()
        .filter(run -> names(run).stream().anyMatch(each -> small(each).equals(wanted)))
        .toList();
  }

  /** What may have been meant by a name that means nothing. */
  @Nullable
  String nearest(String name) {
    Set<String> known = new LinkedHashSet<>();
    plan.placements().forEach(run -> known.addAll(names(run)));
    return Nearest.to(name, known);
  }

  /** {@code roast of Leg of lamb}, with its batch where there are several. */
  String full(Placement run) {
    String name = run.step() + " of " + run.dish();
    boolean all = run.batches().count() == plan.event().dish(run.dish()).batches();
    return all ? name : name + " (batch " + run.batches().first() + ")";
  }

  private static List<String> names(Placement run) {
    List<String> names = new ArrayList<>(List.of(run.dish(), run.step()));
    for (String both : List.of(run.dish() + "/" + run.step(), run.step() + " of " + run.dish())) {
      names.add(both);
      for (int batch = run.batches().first(); batch <= run.batches().last(); batch++) {
        names.add(both + " (batch " + batch + ")");
        names.add(both + " batch " + batch);
      }
    }
    return names;
  }

  private static String small(String words) {
    return words.strip().toLowerCase(Locale.ROOT);
  }
}
