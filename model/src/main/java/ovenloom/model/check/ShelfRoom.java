package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;

/** Food fits where it must stand: steps in cold and hot places, and gaps that must be waited through. */
final class ShelfRoom implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (BatchStep step : scene.firstBatches()) {
      onItsShelf(scene, step, found);
      List<String> tooSmall = whereItKeeps(scene, step, found);
      for (BatchLink link : scene.work().outOf(step.index())) {
        boolean waits = link.makesAStay() && scene.work().leavesAStay(step.index());
        Trouble trouble = waits ? tooLong(scene, step, link, tooSmall) : null;
        if (trouble != null) {
          BatchStep later = scene.work().steps().get(link.to());
          String key = later.dish().equals(step.dish()) ? "after" : "uses";
          found.add(Finding.fatal(Scene.subject(later).key(key).key(step.step().name()), trouble));
        }
      }
    }
    return found;
  }

  private static void onItsShelf(Scene scene, BatchStep step, List<Finding> found) {
    Need.OnShelf shelf = step.step().shelf();
    if (shelf == null) {
      return;
    }
    List<Store> stores = stores(scene, shelf.stores());
    String key = stores.stream().allMatch(store -> store.kind().isCold()) ? "cold" : "hot";
    for (Vessel vessel : scene.vessels(step)) {
      Size size = vessel.size();
      if (size != null && stores.stream().noneMatch(store -> takes(store, size))) {
        found.add(Finding.fatal(Scene.subject(step).key(key),
            new Trouble.NoShelf(vessel.name(), size, shelf.stores())));
      }
    }
  }

  /** Notes the places that are too small for its vessel, and names them; so for a kind of place if all of it are. */
  private static List<String> whereItKeeps(Scene scene, BatchStep step, List<Finding> found) {
    Keeps keeps = step.step().keeps();
    Subject subject = Scene.subject(step).key("keeps");
    List<String> all = new ArrayList<>();
    for (Vessel vessel : keeps == null ? List.<Vessel>of() : scene.vessels(step)) {
      Size size = vessel.size();
      List<Store> stores = keeps == null ? List.of() : stores(scene, List.copyOf(keeps.stores().keySet()));
      for (Store store : stores) {
        if (size != null && !takes(store, size)) {
          List<Store> ofKind = stores.stream().filter(each -> each.kind() == store.kind()).toList();
          all.add(store.name());
          found.add(note(subject.key(store.name()), vessel, size, List.of(store)));
          if (ofKind.stream().noneMatch(each -> takes(each, size))) {
            found.add(note(subject.key(store.kind().name().toLowerCase(Locale.ROOT)), vessel, size, ofKind));
          }
        }
      }
    }
    return all;
  }

  private static Finding note(Subject subject, Vessel vessel, Size size, List<Store> stores) {
    return Finding.note(subject,
        new Trouble.NoShelf(vessel.name(), size, stores.stream().map(Store::name).toList()));
  }

  private static @Nullable Trouble tooLong(Scene scene, BatchStep step, BatchLink link,
      List<String> tooSmall) {
    Keeps keeps = Objects.requireNonNullElse(step.step().keeps(), Keeps.HARDLY);
    int most = free(counter(link, keeps));
    for (Store store : stores(scene, List.copyOf(keeps.stores().keySet()))) {
      int there = Objects.requireNonNullElse(keeps.stores().get(store.name()), 0);
      if (!tooSmall.contains(store.name())) {
        most = Math.max(most, store.kind().isCold() ? free(there) : there);
      }
    }
    most = Math.max(most, step.step().bake() == null ? 0 : orNone(keeps.oven()));
    most = Math.max(most, step.step().burner() == null ? 0 : orNone(keeps.burner()));
    int least = link.link().least();
    return least <= most ? null : new Trouble.KeepsTooShort(least, most, step.step().name(), tooSmall);
  }

  private static int counter(BatchLink link, Keeps keeps) {
    Integer most = link.link().most();
    return most == null ? orNone(keeps.counter()) : most;
  }

  /** Some minutes on the counter are free beside any others. */
  private static int free(int minutes) {
    return minutes + Keeps.FREE_ON_THE_COUNTER;
  }

  private static int orNone(@Nullable Integer minutes) {
    return minutes == null ? 0 : minutes;
  }

  private static List<Store> stores(Scene scene, List<String> names) {
    return scene.event().kitchen().stores().stream().filter(store -> names.contains(store.name())).toList();
  }

  private static boolean takes(Store store, Size size) {
    Length height = size.height();
    return store.shelves()
        .stream()
        .anyMatch(shelf -> Fits.lies(size, shelf.width(), shelf.depth())
            && (height == null || height.compareTo(shelf.height()) <= 0));
  }
}
