package ovenloom.model.file;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.measure.Power;

/** Reads a burner: its size, or more about it. One without a name is called by its size and counted. */
final class BurnerReader {

  static final Keys BURNER = Keys.of("a burner", "name", "size", "power", "circuit", "hours", "taken");

  /** Common practice. */
  private static final Power POWER = new Power(1500);

  private final Desk desk;
  private final HoursReader hours;
  private final Map<BurnerSize, Integer> counted = new EnumMap<>(BurnerSize.class);

  BurnerReader(Desk desk, HoursReader hours) {
    this.desk = desk;
    this.hours = hours;
  }

  @Nullable
  Burner burner(Written written) {
    if (written instanceof Written.Words) {
      BurnerSize size = desk.read(written, Scalars.oneOf(BurnerSize.class));
      return size == null ? null : new Burner(nextName(size), size, POWER, null, Availability.ALWAYS);
    }
    Fields burner = desk.fields(written, BURNER);
    BurnerSize size = burner.needed("size", Scalars.oneOf(BurnerSize.class));
    String name = burner.take("name", n -> desk.newName(n, Names.Kind.BURNER));
    Power power = burner.read("power", Power::read, POWER);
    String circuit = burner.take("circuit", c -> desk.reference(c, Names.Kind.CIRCUIT));
    Availability open = hours.availability(burner);
    return size == null ? null : new Burner(name == null ? nextName(size) : name, size, power, circuit, open);
  }

  private String nextName(BurnerSize size) {
    String name;
    do {
      name = Scalars.word(size) + " burner " + counted.merge(size, 1, Integer::sum);
    } while (!desk.names().add(Names.Kind.BURNER, name));
    return name;
  }
}
