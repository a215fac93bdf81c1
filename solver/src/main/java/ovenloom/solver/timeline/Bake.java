package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * A bake as an oven sees it: stages at settings, an open door now and then, a door that must stay shut for a while.
 * Minutes count from its start.
 */
public final class Bake {

  /** The setting of an oven that is switched off. */
  public static final int OFF = -1;

  /** The first openings of each: as it goes in, as it comes out. */
  static final int IN_AND_OUT = 2;

  private final int[] from;
  private final int[] setting;
  private final int minutes;
  private final int load;
  private final int unload;
  private final int shut;
  private final int[] opensAt;
  private final int[] opensFor;
  private final long tags;
  private final long avoids;

  /**
   * A bake.
   *
   * @param lengths minutes of each stage
   * @param settings of each stage, by number
   * @param load minutes the door is open to put it in
   * @param unload minutes to take it out
   * @param shut minutes after the loading in which nobody opens the oven
   * @param middleAt when else it opens the door
   * @param middleFor for how long each time
   * @param tags what it is, bit by bit
   * @param avoids what it shares no oven with, bit by bit
   */
  public Bake(
      int[] lengths,
      int[] settings,
      int load,
      int unload,
      int shut,
      int[] middleAt,
      int[] middleFor,
      long tags,
      long avoids) {
    from = new int[lengths.length + 1];
    for (int stage = 0; stage < lengths.length; stage++) {
      from[stage + 1] = from[stage] + lengths[stage];
    }
    setting = settings.clone();
    minutes = from[lengths.length];
    this.load = load;
    this.unload = unload;
    this.shut = Math.min(shut, minutes - load - unload);
    this.tags = tags;
    this.avoids = avoids;
    opensAt = new int[IN_AND_OUT + middleAt.length];
    opensFor = new int[IN_AND_OUT + middleAt.length];
    opensFor[0] = load;
    opensAt[1] = minutes - unload;
    opensFor[1] = unload;
    System.arraycopy(middleAt, 0, opensAt, IN_AND_OUT, middleAt.length);
    System.arraycopy(middleFor, 0, opensFor, IN_AND_OUT, middleFor.length);
  }

  /** The same, left in the oven at a setting for some minutes more, and taken out in the last of them. */
  public Bake held(int longer, int at) {
    int all = setting.length + 1;
    int[] lengths = new int[all];
    int[] settings = Arrays.copyOf(setting, all);
    for (int stage = 0; stage < setting.length; stage++) {
      lengths[stage] = minutes(stage);
    }
    lengths[all - 1] = longer;
    settings[all - 1] = at;
    return new Bake(
        lengths,
        settings,
        load,
        unload,
        shut,
        Arrays.copyOfRange(opensAt, IN_AND_OUT, opensAt.length),
        Arrays.copyOfRange(opensFor, IN_AND_OUT, opensFor.length),
        tags,
        avoids);
  }

  /** All its minutes. */
  public int minutes() {
    return minutes;
  }

  /** How many stages it has. */
  public int stages() {
    return setting.length;
  }

  /** The setting of a stage. */
  public int setting(int stage) {
    return setting[stage];
  }

  /** When a stage begins. */
  public int from(int stage) {
    return from[stage];
  }

  /** How long a stage lasts. */
  public int minutes(int stage) {
    return from[stage + 1] - from[stage];
  }

  /** For how many of its minutes the oven is on. */
  int minutesOn() {
    return isLeftOff() ? from[setting.length - 1] : minutes;
  }

  /** The last setting at which the oven is on for it. */
  int lastOn() {
    return setting[isLeftOff() ? setting.length - 2 : setting.length - 1];
  }

  private boolean isLeftOff() {
    return setting[setting.length - 1] == OFF;
  }

  boolean avoids(Bake other) {
    return (avoids & other.tags) != 0 || (tags & other.avoids) != 0;
  }

  int load() {
    return load;
  }

  int unload() {
    return unload;
  }

  int shutFrom() {
    return load;
  }

  int shutTo() {
    return load + shut;
  }

  int openings() {
    return opensAt.length;
  }

  int opensAt(int opening) {
    return opensAt[opening];
  }

  /** Whether an opening of its own, started at the moment, falls into the stretch. */
  boolean opensWithin(int start, int opening, int low, int high) {
    int at = start + opensAt[opening];
    return at < high && at + opensFor[opening] > low;
  }

  /** Whether no opening of its own, started at the moment, falls into the stretch. */
  boolean opensNotWithin(int start, int low, int high) {
    for (int opening = 0; low < high && opening < opensAt.length; opening++) {
      if (opensWithin(start, opening, low, high)) {
        return false;
      }
    }
    return true;
  }
}
