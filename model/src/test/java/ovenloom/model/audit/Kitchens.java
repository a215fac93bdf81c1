package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;

/**
 * Kitchens for tests. The home kitchen has one oven ("oven", see {@link Ovens}); a "large", a "medium" and a "small"
 * burner; a "fridge" with shelves "top", "middle", "bottom" of 50 x 36 x 20 cm; a hot "cabinet" with an "upper" and a
 * "lower" one; four trays (50 x 35 x 2 cm), six dishes (25 x 35 x 6 cm), two pots (20 x 20 x 15 cm), four bowls without a
 * size, twenty plates; one mixer; room for six vessels on the worktop, and 1 cm between them.
 *
 * <p>Whatever is added replaces what has its name.
 */
public final class Kitchens {

  private static final Power BURNER = new Power(1500);

  private Temperature room = Temperature.celsius(20);
  private int landing = Kitchen.LANDING;
  private Length gap = Length.cm(1);
  private final List<Ovens> ovens = new ArrayList<>(List.of(Ovens.anOven("oven")));
  private final List<Burner> burners = new ArrayList<>();
  private final List<Store> stores = new ArrayList<>();
  private final List<Vessel> vessels = new ArrayList<>();
  private final List<Appliance> appliances = new ArrayList<>();
  private final List<Circuit> circuits = new ArrayList<>();

  private Kitchens() {}

  public static Kitchens aHomeKitchen() {
    return new Kitchens()
        .burner("large", BurnerSize.LARGE)
        .burner("medium", BurnerSize.MEDIUM)
        .burner("small", BurnerSize.SMALL)
        .fridge("fridge", aShelf("top"), aShelf("middle"), aShelf("bottom"))
        .with(new Store("cabinet", Store.Kind.HOT, Temperature.celsius(70), Air.STILL,
            List.of(aShelf("upper"), aShelf("lower")), Availability.ALWAYS))
        .vessel("tray", 4, cm(50, 35, 2))
        .vessel("dish", 6, cm(25, 35, 6))
        .with(
            new Vessel("pot", 2, cm(20, 20, 15), BurnerSize.MEDIUM, Vessel.WASH_MINUTES, Availability.ALWAYS))
        .vessel("bowl", 4, null)
        .vessel("plate", 20, null)
        .appliance("mixer", 1, 1);
  }

  /** Open only then. */
  public static Availability open(Stretch... hours) {
    return new Availability(List.of(hours), List.of());
  }

  /** Open always, but for so many that are somebody else's then. */
  public static Availability taken(Stretch when, int count) {
    return new Availability(List.of(), List.of(new Availability.Taken(when, count)));
  }

  public static Size cm(double width, double depth, double height) {
    return new Size(Length.cm(width), Length.cm(depth), Length.cm(height));
  }

  /** A shelf of 50 x 36 x 20 cm. */
  public static Shelf aShelf(String name) {
    return aShelf(name, cm(50, 36, 20), Availability.ALWAYS);
  }

  public static Shelf aShelf(String name, Size size, Availability open) {
    return new Shelf(name, size.width(), size.depth(), height(size), open);
  }

  private static Length height(Size size) {
    Length height = size.height();
    return height == null ? Length.cm(0) : height;
  }

  public Kitchens room(double celsius) {
    room = Temperature.celsius(celsius);
    return this;
  }

  public Kitchens landing(int vesselsInAll) {
    landing = vesselsInAll;
    return this;
  }

  public Kitchens gap(double cm) {
    gap = Length.cm(cm);
    return this;
  }

  /** Instead of the one oven. */
  public Kitchens ovens(Ovens... all) {
    ovens.clear();
    ovens.addAll(Arrays.asList(all));
    return this;
  }

  public Kitchens burner(String name, BurnerSize size) {
    return with(new Burner(name, size, BURNER, null, Availability.ALWAYS));
  }

  public Kitchens fridge(String name, Shelf... topDown) {
    return with(new Store(
        name, Store.Kind.FRIDGE, Temperature.celsius(4), Air.STILL, List.of(topDown), Availability.ALWAYS));
  }

  public Kitchens freezer(String name, Shelf... topDown) {
    return with(new Store(
        name, Store.Kind.FREEZER, Temperature.celsius(-18), Air.STILL, List.of(topDown),
        Availability.ALWAYS));
  }

  public Kitchens vessel(String name, int count, @Nullable Size size) {
    return with(
        new Vessel(name, count, size, BurnerSize.SMALL, Vessel.WASH_MINUTES, Availability.ALWAYS));
  }

  public Kitchens appliance(String name, int count, int places) {
    return with(new Appliance(name, count, places, false, new Power(500), null, Availability.ALWAYS));
  }

  public Kitchens circuit(String name, int watts) {
    circuits.add(new Circuit(name, new Power(watts)));
    return this;
  }

  public Kitchens with(Burner burner) {
    return put(burners, Burner::name, burner);
  }

  public Kitchens with(Store store) {
    return put(stores, Store::name, store);
  }

  public Kitchens with(Vessel vessel) {
    return put(vessels, Vessel::name, vessel);
  }

  public Kitchens with(Appliance appliance) {
    return put(appliances, Appliance::name, appliance);
  }

  private <T> Kitchens put(List<T> all, Function<T, String> name, T one) {
    all.removeIf(each -> name.apply(each).equals(name.apply(one)));
    all.add(one);
    return this;
  }

  public Kitchen kitchen() {
    return new Kitchen(room, landing, gap, ovens.stream().map(Ovens::oven).toList(),
        burners, stores, vessels, appliances, circuits);
  }
}
