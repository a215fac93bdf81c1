package ovenloom.solver.place;

import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Temperature;
import ovenloom.solver.timeline.Bake;
import ovenloom.solver.timeline.OvenHeat;
import ovenloom.solver.timeline.Presence;

/** How an oven warms and cools between the settings of its dial, worked out beforehand. */
final class DialHeat implements OvenHeat {

  private final Oven oven;
  private final Presence there;
  private final Temperature[] temperature;
  private final int[][] change;
  private final int[] fromRoom;

  /** @param there when someone may switch it on */
  DialHeat(Oven oven, Presence there) {
    this.oven = oven;
    this.there = there;
    OvenDial dial = new OvenDial(oven);
    temperature = dial.temperatures();
    int all = temperature.length;
    change = new int[all][all];
    fromRoom = new int[all];
    for (int from = 0; from < all; from++) {
      fromRoom[from] = oven.warmth().minutes(oven.warmth().room(), temperature[from]);
      for (int to = 0; to < all; to++) {
        change[from][to] = oven.warmth().minutes(temperature[from], temperature[to]);
      }
    }
  }

  @Override
  public int change(int one, int other) {
    if (one == Bake.OFF) {
      return other == Bake.OFF ? 0 : fromRoom[other];
    }
    return other == Bake.OFF ? 0 : change[one][other];
  }

  @Override
  public int fromRoom(int setting) {
    return fromRoom[setting];
  }

  @Override
  public int preheat(int last, int next, int minutes) {
    return oven.warmth().preheat(temperature[last], temperature[next], minutes);
  }

  @Override
  public int onBefore(int last, int next, int from, int to) {
    int preheat = Standby.preheat(oven, there, temperature[last], temperature[next], from, to);
    return preheat == Standby.HELD ? to - from : preheat;
  }
}
