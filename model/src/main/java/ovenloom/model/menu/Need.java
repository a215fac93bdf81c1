package ovenloom.model.menu;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Level;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;

/** What a step must have for as long as it lasts. */
public sealed interface Need {

  /**
   * An oven, for all its vessels.
   *
   * @param stages one after the other, hottest first as a rule; all but the last say their minutes
   * @param level which rack
   * @param stands how tall the food stands, where it is taller than its vessel
   * @param load minutes of its beginning that take a cook
   * @param unload minutes of its end that take a cook
   * @param doorShut minutes, from the end of its loading, in which nobody opens the oven; {@link #TO_THE_END} for all
   * @param core temperature inside at which it is done
   * @param overcookPercent how much longer than needed it may be booked
   */
  record Bake(
      List<Stage> stages,
      @Nullable Level level,
      @Nullable Length stands,
      int load,
      int unload,
      int doorShut,
      @Nullable Temperature core,
      int overcookPercent)
      implements
        Need {

    /** The door stays shut until the bake's own unloading. */
    public static final int TO_THE_END = Integer.MAX_VALUE;

    /** Where a file does not say. */
    public static final int OVERCOOK_PERCENT = 20;

    public Bake {
      stages = List.copyOf(stages);
      if (stages.isEmpty() || load < 1 || unload < 1 || doorShut < 0) {
        throw new IllegalArgumentException("a bake has a stage, and takes a minute to load and to unload");
      }
    }
  }

  /**
   * A part of a bake at one set-point.
   *
   * @param written the setting as written
   * @param from the coolest setting that will do
   * @param to the hottest
   * @param mode the oven mode it is written for
   * @param minutes of this stage; absent in the last, which takes what is left
   */
  record Stage(Setting written, Setting from, Setting to, String mode, @Nullable Integer minutes) {}

  /**
   * A burner for each of its vessels.
   *
   * @param core temperature inside at which it is done
   */
  record OnBurner(BurnerSize atLeast, @Nullable Temperature core) implements Need {}

  /** A place on a machine. */
  record OnAppliance(String appliance) implements Need {}

  /** Vessels that its food is in when it ends. */
  record InVessel(String vessel, int count) implements Need {
    public InVessel {
      if (count < 1) {
        throw new IllegalArgumentException("a step takes at least one \"" + vessel + "\", not " + count);
      }
    }
  }

  /**
   * A shelf of a cold or hot place for its vessels.
   *
   * @param stores the names of those that will do
   */
  record OnShelf(List<String> stores) implements Need {
    public OnShelf {
      stores = List.copyOf(stores);
    }
  }

  /**
   * Someone's hands.
   *
   * @param cooks how many people, one of them with the skill
   */
  record Hands(Moment moment, int cooks, @Nullable String skill) implements Need {}

  /** When, within a step, hands are needed. */
  sealed interface Moment {

    /** From end to end. */
    record Throughout() implements Moment {}

    /** The first minutes. */
    record First(int minutes) implements Moment {}

    /** The last minutes. */
    record Last(int minutes) implements Moment {}

    /**
     * In the middle.
     *
     * @param after minutes from the step's start, of the written minutes
     * @param sharp whether it may not slip
     */
    record At(int after, int minutes, boolean sharp) implements Moment {}
  }
}
