package ovenloom.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

/** Reads a kitchen, and fills in what most kitchens share. */
final class KitchenReader {

  static final Keys KITCHEN = Keys.of("a kitchen", "room", "landing", "gap", "ovens", "burners", "cold",
      "hot",
      "vessels", "appliances", "circuits", "from");

  /** Common practice. */
  private static final Temperature ROOM = Temperature.celsius(21);
  /** Common practice. */
  private static final Length GAP = Length.cm(1);

  /** How many ovens, burners, cold or hot places a kitchen may have. */
  private static final int MOST = 100;

  private final Desk desk;
  private final HoursReader hours;

  KitchenReader(Desk desk, HoursReader hours) {
    this.desk = desk;
    this.hours = hours;
  }

  Kitchen kitchen(Written written) {
    Fields kitchen = desk.fields(written, KITCHEN);
    VesselReader things = new VesselReader(desk, hours);
    List<Circuit> circuits = listed(kitchen, "circuits", Names.Kind.CIRCUIT, things::circuit);
    List.of("ovens", "burners", "cold", "hot").forEach(key -> kitchen.refuseMany(key, MOST));
    Temperature room = kitchen.read("room", Temperature::read, ROOM);
    OvenReader oven = new OvenReader(desk, hours, room);
    List<Oven> ovens = kitchen.each("ovens", oven::oven);
    StoreReader store = new StoreReader(desk, hours);
    List<Store> stores = kitchen.each("cold", store::cold);
    stores.addAll(kitchen.each("hot", store::hot));
    return new Kitchen(
        room,
        kitchen.read("landing", Scalars::countOrNone, Kitchen.LANDING),
        kitchen.read("gap", Length::read, GAP),
        ovens,
        kitchen.each("burners", new BurnerReader(desk, hours)::burner),
        stores,
        listed(kitchen, "vessels", Names.Kind.VESSEL, things::vessel),
        listed(kitchen, "appliances", Names.Kind.APPLIANCE, things::appliance),
        circuits);
  }

  private <T> List<T> listed(
      Fields kitchen, String key, Names.Kind kind, Function<Written.Entry, @Nullable T> reader) {
    Written value = kitchen.value(key);
    if (value == null) {
      return List.of();
    }
    List<T> all = new ArrayList<>();
    for (Written.Entry entry : desk.entries(value, key,
        kind == Names.Kind.CIRCUIT ? "ring: 3 kW" : "half sheet: 2")) {
      T thing = reader.apply(entry);
      if (thing != null) {
        all.add(thing);
      }
    }
    if (value instanceof Written.Keyed keyed) {
      keyed.entries().forEach(entry -> desk.names().add(kind, entry.key().text()));
    }
    return all;
  }
}
