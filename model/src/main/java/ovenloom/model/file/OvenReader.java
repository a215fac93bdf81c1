package ovenloom.model.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.check.Subject;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Size;
import ovenloom.model.measure.Temperature;

/** Reads an oven. */
final class OvenReader {

  static final Keys OVEN = Keys.of("an oven", "name", "dial", "step", "modes", "heats", "cools", "hold",
      "racks",
      "heating", "holding", "circuit", "hours", "taken");
  static final Keys RACK = Keys.of("a rack", "size", "clear", "count");

  private static final int MOST_RACKS = 100;
  /** Common practice. */
  private static final Power HEATING = new Power(3000);
  /** Common practice. */
  private static final Power HOLDING = new Power(1000);

  private final Desk desk;
  private final HoursReader hours;
  private final Temperature room;

  OvenReader(Desk desk, HoursReader hours, Temperature room) {
    this.desk = desk;
    this.hours = hours;
    this.room = room;
  }

  @Nullable
  Oven oven(Written written) {
    Fields oven = desk.fields(written, OVEN);
    String name = oven.takeNeeded("name", named -> desk.newName(named, Names.Kind.OVEN));
    DialReader marks = new DialReader(desk);
    Dial dial = marks.dial(oven);
    Written levels = oven.needed("racks");
    oven.refuseEmpty("racks");
    List<Rack> racks = levels == null ? List.of() : racks(levels);
    var warmth = WarmthReader.warmth(desk, oven, room);
    var hold = marks.hold(oven, dial);
    Power heating = oven.read("heating", Power::read, HEATING);
    Power holding = oven.read("holding", Power::read, HOLDING);
    String circuit = oven.take("circuit", c -> desk.reference(c, Names.Kind.CIRCUIT));
    var open = hours.availability(oven);
    List<String> modes = modes(oven);
    if (name != null) {
      oven.standFor(Subject.oven(name), "name");
    }
    return name == null || racks.isEmpty() ? null
        : new Oven(name, dial, modes, warmth, hold, racks, heating, holding, circuit, open);
  }

  private List<String> modes(Fields oven) {
    List<String> modes = oven.each("modes", desk::name);
    return modes.isEmpty() ? List.of(Oven.STILL) : modes.stream().distinct().toList();
  }

  private List<Rack> racks(Written written) {
    List<Rack> racks = new ArrayList<>();
    for (Written each : desk.items(written)) {
      Fields rack = desk.fields(each, RACK);
      int count = rack.read("count", Scalars::count, 1);
      Size size = rack.needed("size", Size::read);
      Length clear = rack.needed("clear", Length::read);
      if (racks.size() + count > MOST_RACKS) {
        desk.mistake(rack.place(), new Fault.TooMuch("racks in an oven", MOST_RACKS));
        return racks;
      }
      if (size != null && clear != null) {
        racks.addAll(Collections.nCopies(count, new Rack(size.width(), size.depth(), clear)));
      }
    }
    return racks;
  }
}
