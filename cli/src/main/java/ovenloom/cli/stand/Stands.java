package ovenloom.cli.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Spread;
import ovenloom.solver.timeline.Footprints;
import ovenloom.solver.timeline.Layout;
import ovenloom.solver.timeline.RackFit;

/**
 * All racks and shelves of a plan on which something stands. Where more than eight do the plan says how; else a way is found in
 * which they have room, which is one of many.
 */
public final class Stands {

  private final Plan plan;
  private final List<Standing> all;
  private final Footprints footprints = new Footprints();
  private final List<Surface> surfaces = new ArrayList<>();

  private Stands(Plan plan) {
    this.plan = plan;
    all = Standings.of(plan);
  }

  /** Ovens first, then cold and hot places, each level by level. */
  public static List<Surface> of(Plan plan) {
    Stands stands = new Stands(plan);
    for (Oven oven : plan.event().kitchen().ovens()) {
      for (int level = 0; level < oven.racks().size(); level++) {
        Rack rack = oven.racks().get(level);
        stands.add(oven.name(), level, new Size(rack.width(), rack.depth()));
      }
    }
    for (Store store : plan.event().kitchen().stores()) {
      for (int level = 0; level < store.shelves().size(); level++) {
        Shelf shelf = store.shelves().get(level);
        stands.add(store.name(), level, new Size(shelf.width(), shelf.depth()));
      }
    }
    return stands.surfaces;
  }

  private void add(String place, int level, Size size) {
    List<Standing> here = all.stream()
        .filter(each -> each.place().equals(place) && each.level() == level)
        .toList();
    if (!here.isEmpty()) {
      surfaces.add(new Surface(place, level, size, scenes(place, level, size, here)));
    }
  }

  private List<Scene> scenes(String place, int level, Size size, List<Standing> here) {
    RackFit fit = new RackFit(footprints, (int) size.width().micrometres(), (int) size.depth().micrometres(),
        (int) plan.event().kitchen().gap().micrometres());
    TreeSet<Integer> changes = new TreeSet<>();
    here.forEach(each -> changes.addAll(List.of(each.when().from(), each.when().to())));
    List<Scene> scenes = new ArrayList<>();
    int from = changes.first();
    for (int to : changes.tailSet(from, false)) {
      Stretch when = new Stretch(from, to);
      List<Standing> there = here.stream().filter(each -> each.when().encloses(when)).toList();
      Spread told = told(place, level, when);
      scenes.add(new Scene(when, told == null ? found(there, fit) : told(there, told)));
      from = to;
    }
    return scenes;
  }

  private @Nullable Spread told(String place, int level, Stretch when) {
    return plan.layouts()
        .stream()
        .filter(each -> each.place().equals(place) && each.level() == level && each.when().encloses(when))
        .findFirst()
        .orElse(null);
  }

  private static List<Stood> told(List<Standing> there, Spread told) {
    List<Stood> stood = new ArrayList<>();
    for (Standing each : there) {
      told.spots()
          .stream()
          .filter(each::is)
          .map(spot -> each.at(spot.left().micrometres(), spot.front().micrometres(), spot.turned()))
          .forEach(stood::add);
    }
    return stood;
  }

  /** A layout has the longer side from left to right, a vessel its width. */
  private List<Stood> found(List<Standing> there, RackFit fit) {
    int[] shapes = there.stream()
        .mapToInt(each -> footprints.number((int) each.size().width().micrometres(),
            (int) each.size().depth().micrometres()))
        .toArray();
    Layout layout = fit.layout(shapes, shapes.length);
    List<Stood> stood = new ArrayList<>();
    for (int i = 0; layout != null && i < shapes.length; i++) {
      Layout.Spot spot = layout.spots().get(i);
      stood.add(there.get(i).at(spot.x(), spot.y(), spot.turned() != there.get(i).isDeeperThanWide()));
    }
    return stood;
  }
}
