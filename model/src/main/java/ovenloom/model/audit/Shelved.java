package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * Food on shelves, for a run or while it waits.
 *
 * @param who whose food it is, as a cook would call it
 * @param steps whose food it is; none where the menu has no such step
 * @param batches as the run or the stay has them
 * @param places one for each of the pieces, or one in all
 */
record Shelved(String who, List<BatchStep> steps, String dish, String step, Batches batches,
    List<Piece> pieces, List<ShelfPlace> places, Stretch when) {

  static List<Shelved> of(Case plan) {
    List<Shelved> all = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      if (!run.shelves().isEmpty()) {
        all.add(new Shelved(plan.name(run), plan.steps(run), run.dish(), run.step(), run.batches(),
            Piece.of(plan, run), run.shelves(), run.when()));
      }
    }
    for (Stay stay : plan.plan().stays()) {
      for (Stay.Part part : stay.parts()) {
        if (part.where() instanceof Where.OnShelf on) {
          all.add(of(plan, stay, on, part.when()));
        }
      }
    }
    return all;
  }

  private static Shelved of(Case plan, Stay stay, Where.OnShelf on, Stretch when) {
    List<ShelfPlace> places = on.shelves().stream().map(shelf -> new ShelfPlace(on.store(), shelf)).toList();
    return new Shelved(plan.name(stay), plan.steps(stay), stay.dish(), stay.step(), stay.batches(),
        Piece.of(plan, stay), places, when);
  }
}
