package ovenloom.cli.sheet;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.BatchStep;

/**
 * One thing to do, at one minute.
 *
 * @param cooks who is booked for it; none where it needs nobody in particular
 * @param thing what it is done to, which is what the eye looks for: a dish, an oven
 * @param words what is done, in sentences
 * @param places where it is done
 * @param step of a dish, for the first of its batches; null for what is done to things
 */
public record Act(int at, Turn turn, List<String> cooks, String thing, String words, Places places,
    @Nullable BatchStep step)
    implements
      Comparable<Act> {

  /**
   * What comes first within a minute: food is probed before it is taken out; a place is emptied before it is filled, and what goes from one to another comes
   * between the two; a dial is turned when the oven is empty. What goes on by itself wants nobody.
   */
  public enum Turn {
    PROBE, TABLE, SERVE, OUT, FETCH, ACROSS, DIAL, INTO_OVEN, IN, WORK, WAIT, BY_ITSELF, OFF, WASH
  }

  private static final Comparator<Act> ORDER = Comparator.comparingInt(Act::at).thenComparing(Act::turn);

  public Act {
    cooks = List.copyOf(cooks);
  }

  Act(int at, Turn turn, List<String> cooks, String thing, String words, Places places) {
    this(at, turn, cooks, thing, words, places, null);
  }

  Act(int at, Turn turn, List<String> cooks, String thing, String words) {
    this(at, turn, cooks, thing, words, Places.NONE);
  }

  /** Whether somebody must act, and nobody is booked. */
  boolean wantsSomeone() {
    return cooks.isEmpty() && turn != Turn.TABLE && turn != Turn.BY_ITSELF;
  }

  /** The same by a cook, with more to be said. */
  Act by(String cook, String more) {
    return new Act(at, turn, List.of(cook), thing, words + more, places, step);
  }

  /** {@code Greta, Tom}. */
  public String who() {
    return String.join(", ", cooks);
  }

  @Override
  public int compareTo(Act other) {
    return ORDER.compare(this, other);
  }
}
