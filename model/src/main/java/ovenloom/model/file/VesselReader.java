package ovenloom.model.file;

import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Pans;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Size;

/** Reads what is listed by name with a count: vessels, appliances; and circuits, with their limit. */
final class VesselReader {

  static final Keys VESSEL = Keys.of("a vessel", "count", "size", "burner", "wash", "hours", "taken");
  static final Keys APPLIANCE = Keys.of("an appliance", "count", "places", "heats", "draws", "circuit",
      "hours",
      "taken");

  /** A size that nobody knows, though the vessel's name would tell one. */
  static final String UNKNOWN = "unknown";

  private final Desk desk;
  private final HoursReader hours;

  VesselReader(Desk desk, HoursReader hours) {
    this.desk = desk;
    this.hours = hours;
  }

  @Nullable
  Vessel vessel(Written.Entry entry) {
    String name = desk.newName(entry.key(), Names.Kind.VESSEL);
    Size usual = name == null ? null : Pans.size(name);
    if (entry.value() instanceof Written.Keyed) {
      Fields vessel = desk.fields(entry.value(), VESSEL);
      int count = vessel.read("count", Scalars::count, 1);
      boolean unknown = vessel.value("size") instanceof Written.Words words && words.text().equals(UNKNOWN);
      Size written = unknown ? null : vessel.read("size", Size::read);
      Size size = unknown || written != null ? written : usual;
      BurnerSize burner = vessel.read("burner", Scalars.oneOf(BurnerSize.class), BurnerSize.SMALL);
      int wash = vessel.read("wash", Scalars::someMinutes, Vessel.WASH_MINUTES);
      Availability open = hours.availability(vessel);
      return name == null ? null : new Vessel(name, count, size, burner, wash, open);
    }
    Integer count = count(entry);
    return name == null || count == null ? null
        : new Vessel(name, count, usual, BurnerSize.SMALL, Vessel.WASH_MINUTES, Availability.ALWAYS);
  }

  @Nullable
  Appliance appliance(Written.Entry entry) {
    String name = desk.newName(entry.key(), Names.Kind.APPLIANCE);
    if (entry.value() instanceof Written.Keyed) {
      Fields appliance = desk.fields(entry.value(), APPLIANCE);
      int count = appliance.read("count", Scalars::count, 1);
      int places = appliance.read("places", Scalars::count, 1);
      boolean heats = appliance.yes("heats");
      Power draws = appliance.read("draws", Power::read, new Power(0));
      String circuit = appliance.take("circuit", c -> desk.reference(c, Names.Kind.CIRCUIT));
      Availability open = hours.availability(appliance);
      if (name != null) {
        appliance.standFor(Subject.appliance(name), "count");
      }
      return name == null ? null : new Appliance(name, count, places, heats, draws, circuit, open);
    }
    Integer count = count(entry);
    return name == null || count == null ? null
        : new Appliance(name, count, 1, false, new Power(0), null, Availability.ALWAYS);
  }

  @Nullable
  Circuit circuit(Written.Entry entry) {
    String name = desk.newName(entry.key(), Names.Kind.CIRCUIT);
    Power limit = desk.read(entry.value(), Power::read);
    return name == null || limit == null ? null : new Circuit(name, limit);
  }

  private @Nullable Integer count(Written.Entry entry) {
    return desk.read(entry.value(), Scalars::count);
  }
}
