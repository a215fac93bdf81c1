package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;

/**
 * Ovens for tests, with figures for sums in the head: in a room of 20 C an oven warms by 10 K a minute and, turned down
 * or off, is half as far above the room after 14 minutes. It has a dial from 50 C to 250 C by 5, still and fan, and two
 * racks of 55 x 38 cm with 15 cm above each; 3 kW to heat, 1 kW to hold.
 */
public final class Ovens {

  private static final Temperature ROOM = Temperature.celsius(20);

  private final String name;
  private Dial dial = new Dial(Setting.celsius(50), Setting.celsius(250), Dial.CELSIUS_STEP);
  private Setting hold = Setting.celsius(80);
  private List<String> modes = List.of(Oven.STILL, Oven.FAN);
  private List<Rack> racks = List.of(aRack(15), aRack(15));
  private @Nullable String circuit;
  private Availability open = Availability.ALWAYS;

  private Ovens(String name) {
    this.name = name;
  }

  public static Ovens anOven(String name) {
    return new Ovens(name);
  }

  /** A rack of 55 x 38 cm. */
  public static Rack aRack(double clear) {
    return new Rack(Length.cm(55), Length.cm(38), Length.cm(clear));
  }

  public Ovens dial(Setting lowest, Setting highest, int step) {
    dial = new Dial(lowest, highest, step);
    hold = lowest;
    return this;
  }

  public Ovens modes(String... all) {
    modes = List.of(all);
    return this;
  }

  /** So many racks with 15 cm above each. */
  public Ovens racks(int count) {
    List<Rack> all = new ArrayList<>();
    for (int rack = 0; rack < count; rack++) {
      all.add(aRack(15));
    }
    racks = all;
    return this;
  }

  public Ovens racks(Rack... fromTheBottomUp) {
    racks = List.of(fromTheBottomUp);
    return this;
  }

  public Ovens onCircuit(String wanted) {
    circuit = wanted;
    return this;
  }

  public Ovens open(Availability wanted) {
    open = wanted;
    return this;
  }

  public Oven oven() {
    Warmth warmth = new Warmth(
        ROOM, Temperature.celsius(220), 20, Temperature.celsius(220), Temperature.celsius(120), 14);
    return new Oven(name, dial, modes, warmth, hold, racks, new Power(3000), new Power(1000), circuit, open);
  }
}
