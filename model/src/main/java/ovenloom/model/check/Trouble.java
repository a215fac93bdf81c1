package ovenloom.model.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Level;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Size;
import ovenloom.model.safety.Source;

/** Why something cannot be, as data; the words are chosen where it is printed. Times are minutes. */
public sealed interface Trouble {

  /** Steps each of which waits for the next, and the last for the first. */
  record Circle(List<String> steps) implements Trouble {
    public Circle {
      steps = List.copyOf(steps);
    }
  }

  /** A bake, and no oven. */
  record NoOven() implements Trouble {}

  /**
   * A bake that no oven can be set to.
   *
   * @param stage which stage of several, from 1; absent where there is one, or where each would do by itself
   */
  record NoMark(Setting from, Setting to, String mode, @Nullable Integer stage) implements Trouble {}

  /** A bake that nothing says what stands in the oven. */
  record NothingToBakeIn() implements Trouble {}

  /** A bake in something of unknown size. */
  record NoSize(String vessel) implements Trouble {}

  /** A vessel that no rack takes. */
  record NoRack(String vessel, Size size, @Nullable Length stands,
      @Nullable Level level) implements Trouble {}

  /** Vessels that no oven takes all of. */
  record NoRoomForAll(String vessel, int count) implements Trouble {}

  /** A vessel that no shelf of these places takes. */
  record NoShelf(String vessel, Size size, List<String> places) implements Trouble {
    public NoShelf {
      places = List.copyOf(places);
    }
  }

  /**
   * A gap longer than its food keeps in any place it can stand.
   *
   * @param least the gap
   * @param most what its food allows
   * @param before the step whose food waits
   * @param tooSmall places where it keeps but its vessel does not fit
   */
  record KeepsTooShort(int least, int most, String before, List<String> tooSmall) implements Trouble {
    public KeepsTooShort {
      tooSmall = List.copyOf(tooSmall);
    }
  }

  /** Too few burners that are large enough. */
  record TooFewBurners(BurnerSize atLeast, int wanted, int there) implements Trouble {}

  /** More cooks than there are. */
  record TooFewCooks(int wanted, int there) implements Trouble {}

  /**
   * Work that is longer than anyone is there without a break, or than so many are there together.
   *
   * @param longest the longest they are, 0 where never
   */
  record NobodySoLong(int minutes, int cooks, @Nullable String skill, int longest) implements Trouble {}

  /** Cooking that wants someone about, longer than anyone is. */
  record NobodyAbout(int minutes, int longest) implements Trouble {}

  /** A table time in nobody's hours. */
  record NobodyToServe(String dish) implements Trouble {}

  /** More of a vessel at one time than there are. */
  record TooFewVessels(String vessel, int wanted, int there) implements Trouble {}

  /** A tag for raw food that is none of those of which it is known how hot they must be cooked. */
  record UnknownRawFood(String tag, List<String> known) implements Trouble {
    public UnknownRawFood {
      known = List.copyOf(known);
    }
  }

  /**
   * Food that must be free of an allergen and has it.
   *
   * @param from the dish that brings it in; absent where its own tags say both
   */
  record NotFree(String allergen, @Nullable String from) implements Trouble {}

  /**
   * An allergen that nothing in the menu contains, and that is none of those that everyone knows.
   *
   * @param known those, and what the menu contains
   */
  record UnknownAllergen(String allergen, List<String> known) implements Trouble {
    public UnknownAllergen {
      known = List.copyOf(known);
    }
  }

  /**
   * Food that no plan keeps safe.
   *
   * @param what which limit, and by how much, in a sentence
   * @param source where it is written
   * @param help what would mend it, in a sentence
   */
  record NeverSafe(String what, Source source, String help) implements Trouble {}

  /** More of a vessel with food in them for one step than there are. */
  record TooFewInHand(String vessel, int wanted, int there) implements Trouble {}

  /** More of a vessel at the table together than there are. */
  record TooFewAtTheTable(String vessel, int wanted, int there) implements Trouble {}

  /** More vessels in hand at one time than the landing space holds. */
  record TooLittleLanding(int wanted, int there) implements Trouble {}

  /** A table time that comes before the calendar begins, by so many minutes. */
  record BeforeTheCalendar(int minutes) implements Trouble {}

  /** Steps that take longer, one after the other, than there is time. */
  record TooLateBeforeItBegins(int needed, int there) implements Trouble {}

  /** Serving that takes longer than the dish is served over. */
  record ServedTooLong(int minutes, int servedOver) implements Trouble {}

  /** A step that must end by the table time, and comes after one that begins then. */
  record AfterServing(String served) implements Trouble {}

  /** Stages that take as long as the whole step, or longer. */
  record StagesTooLong(int stages, int step) implements Trouble {}

  /** Hands that want the oven opened while its door must stay shut. */
  record DoorShut(int at, int until) implements Trouble {}

  /** A thing that draws more than its circuit gives. */
  record OverCircuit(Power draws, String circuit, Power limit) implements Trouble {}

  /** A break at a time nobody asked to work. */
  record BreakOutsideHours() implements Trouble {}

  /**
   * Food that in none of the ways on its card cools fast enough.
   *
   * @param help what would mend it, in a sentence
   */
  record NoWayToChill(List<String> why, String help) implements Trouble {
    public NoWayToChill {
      why = List.copyOf(why);
    }
  }

  /**
   * A way to cool food that was chosen, and why others were not.
   *
   * @param minutes for how long
   */
  record ChilledBy(String way, int minutes, List<String> others) implements Trouble {
    public ChilledBy {
      others = List.copyOf(others);
    }
  }
}
