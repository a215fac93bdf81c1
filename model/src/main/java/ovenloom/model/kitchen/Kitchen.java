package ovenloom.model.kitchen;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

/**
 * Everything a kitchen has but its cooks. Names are unique within each list, and no two stores, ovens or burners share
 * one.
 *
 * @param landing how many vessels the worktop, trolley and cooling racks hold
 * @param gap kept between vessels that stand side by side
 * @param stores cold and hot places
 */
public record Kitchen(
    Temperature room,
    int landing,
    Length gap,
    List<Oven> ovens,
    List<Burner> burners,
    List<Store> stores,
    List<Vessel> vessels,
    List<Appliance> appliances,
    List<Circuit> circuits) {

  /** Vessels the landing space holds where a file does not say. Common practice. */
  public static final int LANDING = 6;

  public Kitchen {
    ovens = List.copyOf(ovens);
    burners = List.copyOf(burners);
    stores = List.copyOf(stores);
    vessels = List.copyOf(vessels);
    appliances = List.copyOf(appliances);
    circuits = List.copyOf(circuits);
  }

  /** The same, with other cold and hot places. */
  public Kitchen with(List<Store> others) {
    return new Kitchen(room, landing, gap, ovens, burners, others, vessels, appliances, circuits);
  }

  public @Nullable Oven oven(String name) {
    return named(ovens, Oven::name, name);
  }

  public @Nullable Burner burner(String name) {
    return named(burners, Burner::name, name);
  }

  public @Nullable Store store(String name) {
    return named(stores, Store::name, name);
  }

  public @Nullable Vessel vessel(String name) {
    return named(vessels, Vessel::name, name);
  }

  public @Nullable Appliance appliance(String name) {
    return named(appliances, Appliance::name, name);
  }

  private static <T> @Nullable T named(List<T> things, Function<T, String> name, String wanted) {
    for (T thing : things) {
      if (name.apply(thing).equals(wanted)) {
        return thing;
      }
    }
    return null;
  }
}
