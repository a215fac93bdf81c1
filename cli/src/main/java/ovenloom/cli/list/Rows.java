package ovenloom.cli.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;
import ovenloom.model.plan.Where;

/** A line for each run of a step, for each part of each wait, and for each wash. */
final class Rows {

  private static final String COUNTER = "counter";
  private static final String BURNER = "burner";

  private final Plan plan;
  private final Work work;

  private Rows(Plan plan) {
    this.plan = plan;
    this.work = Work.of(plan.event());
  }

  /** In the order they begin. */
  static List<Row> of(Plan plan) {
    Rows rows = new Rows(plan);
    List<Row> all = new ArrayList<>();
    plan.placements().forEach(run -> all.add(rows.step(run)));
    plan.stays().forEach(stay -> stay.parts().forEach(part -> all.add(rows.wait(stay, part))));
    plan.washes().forEach(wash -> all.add(wash(wash)));
    all.sort(Comparator.comparingInt(row -> row.when().from()));
    return all;
  }

  private Row step(Placement run) {
    Baking baking = run.baking();
    return new Row("step", run.dish(), run.step(), batches(run.batches()), run.when(), place(run), parts(run),
        baking == null ? List.of() : baking.stages().stream().map(stage -> stage.mark().written()).toList(),
        baking == null ? "" : baking.mode(), vessels(run.dish(), run.step(), run.batches()),
        cooks(run.hands()));
  }

  private String place(Placement run) {
    if (run.baking() != null) {
      return run.baking().oven();
    }
    if (!run.shelves().isEmpty()) {
      return run.shelves().getFirst().store();
    }
    List<Need.OnAppliance> machines = step(run.dish(), run.step()).appliances();
    return !run.burners().isEmpty() ? BURNER : machines.isEmpty() ? COUNTER : machines.getFirst().appliance();
  }

  private static List<String> parts(Placement run) {
    return run.baking() != null ? racks(run.baking())
        : !run.burners().isEmpty() ? run.burners()
            : run.shelves().stream().map(ShelfPlace::shelf).distinct().toList();
  }

  /** Counted from the bottom, from 1. */
  private static List<String> racks(Baking baking) {
    return baking.racks().stream().distinct().sorted().map(rack -> "rack " + (rack + 1)).toList();
  }

  private Row wait(Stay stay, Stay.Part part) {
    boolean isLast = part.equals(stay.parts().getLast());
    Row bare = new Row("wait", stay.dish(), stay.step(), batches(stay.batches()), part.when(), COUNTER,
        List.of(), List.of(), "", vessels(stay.dish(), stay.step(), stay.batches()),
        isLast ? cooks(stay.hands()) : List.of());
    return switch (part.where()) {
      case Where.Counter() -> bare;
      case Where.OnShelf(String store, List<String> shelves) ->
        bare.at(store, shelves.stream().distinct().toList(), List.of());
      case Where.InOven(String oven, Setting mark) ->
        bare.at(oven, racks(stay), List.of(mark == null ? "off" : mark.written()));
      case Where.OnBurner(List<String> burners) -> bare.at(BURNER, burners, List.of());
    };
  }

  private List<String> racks(Stay stay) {
    Baking baking = plan.placement(stay.dish(), stay.step(), stay.batches().first()).baking();
    return baking == null ? List.of() : racks(baking);
  }

  private static Row wash(Wash wash) {
    return new Row("wash", "", "", "", wash.when(), "", List.of(), List.of(), "",
        List.of(counted(wash.count(), wash.vessel())), List.of(wash.cook()));
  }

  private Step step(String dish, String step) {
    return plan.event().dish(dish).step(step);
  }

  /** No dash between two, since a spreadsheet would take that for a date. */
  private static String batches(Batches batches) {
    return batches.count() == 1 ? Integer.toString(batches.first())
        : batches.first() + " to " + batches.last();
  }

  /** What its food is in when it ends; one vessel may hold several batches. */
  private List<String> vessels(String dish, String step, Batches batches) {
    boolean inOne = step(dish, step).together().oneVessel();
    Map<String, Integer> counts = new LinkedHashMap<>();
    IntStream.rangeClosed(batches.first(), inOne ? batches.first() : batches.last())
        .mapToObj(batch -> work.find(dish, step, batch))
        .map(BatchStep::index)
        .distinct()
        .flatMap(index -> work.fillingsOf(index).stream())
        .distinct()
        .forEach(filling -> counts.merge(filling.vessel(), filling.count(), Integer::sum));
    return counts.entrySet().stream().map(each -> counted(each.getValue(), each.getKey())).toList();
  }

  private static String counted(int count, String vessel) {
    return count == 1 ? vessel : count + " x " + vessel;
  }

  private static List<String> cooks(List<HandsOn> hands) {
    return hands.stream().flatMap(each -> each.cooks().stream()).distinct().toList();
  }
}
