package ovenloom.cli.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** All vessels that stand in ovens and on shelves, as a plan has them; those whose size nobody gave take no room. */
final class Standings {

  /** A vessel of a run or a wait. */
  private record Piece(String vessel, Batches batches) {}

  private final Plan plan;
  private final Work work;
  private final List<Standing> all = new ArrayList<>();

  private Standings(Plan plan) {
    this.plan = plan;
    work = Work.of(plan.event());
  }

  static List<Standing> of(Plan plan) {
    Standings standings = new Standings(plan);
    plan.placements().forEach(standings::add);
    for (Stay stay : plan.stays()) {
      stay.parts().forEach(part -> standings.add(stay, part));
    }
    return standings.all;
  }

  private void add(Placement run) {
    List<Piece> pieces = pieces(run.dish(), run.step(), run.batches());
    for (int i = 0; i < pieces.size(); i++) {
      if (run.baking() != null && i < run.baking().racks().size()) {
        Stretch inside = new Stretch(run.when().from(), out(run, pieces.get(i)));
        add(run.baking().oven(), run.baking().racks().get(i), run.dish(), run.step(), run.batches(), i,
            pieces.get(i),
            inside);
      }
      if (i < run.shelves().size()) {
        String store = run.shelves().get(i).store();
        add(store, level(store, run.shelves().get(i).shelf()), run.dish(), run.step(), run.batches(), i,
            pieces.get(i),
            run.when());
      }
    }
  }

  /** When a piece leaves the oven it was baked in: with the last of its food that waits there. */
  private int out(Placement run, Piece piece) {
    return plan.stays()
        .stream()
        .filter(stay -> stay.dish().equals(run.dish()) && stay.step().equals(run.step()))
        .filter(stay -> stay.batches().holds(piece.batches()) || piece.batches().holds(stay.batches()))
        .flatMap(stay -> stay.parts().stream())
        .filter(part -> part.where() instanceof Where.InOven)
        .mapToInt(part -> part.when().to())
        .reduce(run.when().to(), Math::max);
  }

  private void add(Stay stay, Stay.Part part) {
    if (part.where() instanceof Where.OnShelf(String store, List<String> shelves)) {
      List<Piece> pieces = pieces(stay.dish(), stay.step(), stay.batches());
      for (int i = 0; i < Math.min(pieces.size(), shelves.size()); i++) {
        add(store, level(store, shelves.get(i)), stay.dish(), stay.step(), stay.batches(), i, pieces.get(i),
            part.when());
      }
    }
  }

  private void add(String place, int level, String dish, String step, Batches batches, int i, Piece piece,
      Stretch when) {
    Vessel vessel = plan.event().kitchen().vessel(piece.vessel());
    Size size = vessel == null ? null : vessel.size();
    if (size != null && when.minutes() > 0) {
      all.add(new Standing(place, level, dish, step, batches, i, piece.vessel(), size, when));
    }
  }

  private int level(String store, String shelf) {
    return Objects.requireNonNull(plan.event().kitchen().store(store))
        .shelves()
        .stream()
        .map(Shelf::name)
        .toList()
        .indexOf(shelf);
  }

  /** Batch by batch; of batches that share a vessel, the first one's. */
  private List<Piece> pieces(String dish, String step, Batches batches) {
    List<BatchStep> steps = work.steps()
        .stream()
        .filter(each -> each.dish().name().equals(dish) && each.step().name().equals(step))
        .filter(each -> batches.holds(each.batches()))
        .toList();
    boolean isOne = !steps.isEmpty() && steps.getFirst().step().together().oneVessel();
    return steps.stream()
        .limit(isOne ? 1 : steps.size())
        .flatMap(each -> work.fillingsOf(each.index())
            .stream()
            .flatMap(filling -> IntStream.range(0, filling.count())
                .mapToObj(i -> new Piece(filling.vessel(), each.batches()))))
        .toList();
  }
}
