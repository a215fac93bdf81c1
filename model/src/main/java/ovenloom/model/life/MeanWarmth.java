package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Cooling;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;

/**
 * How warm the food of each step is on the whole as it begins: {@link Life} in short, which search and score ask thousands of times
 * a second. All of the food of a step is as warm; in a cold place or on the counter it comes down by the first term
 * of the series of the heat equation, and its vapour counts only where a card says that it is open; off an oven or burner it is as
 * warm as its middle is to be; a hot place keeps it as it is.
 */
public final class MeanWarmth {

  /** A place in which food does not cool. */
  public static final int KEPT_WARM = -2;

  /** Room air. */
  public static final int COUNTER = -1;

  /** When steps run, and where food waits after them: in parts, one after the other. */
  public interface Timetable {

    int start(int step);

    int end(int step);

    /** How many parts the wait after a step has. */
    int parts(int step);

    /** Where: {@link #COUNTER}, {@link #KEPT_WARM}, or the number of a store in the kitchen's list. */
    int place(int step, int part);

    int from(int step, int part);

    int to(int step, int part);

    /** The number of the store that a step itself is in; {@link #COUNTER} for none. */
    int store(int step);
  }

  private final int[][] feeders;
  private final boolean[] frozen;
  private final double[] fresh;
  private final double[] done;
  private final double room;
  private final Cooling[][] inStores;
  private final Cooling[] onTheCounter;
  private final double[] middle;

  /** By these cards. */
  public MeanWarmth(Cards cards) {
    Work work = cards.work();
    int steps = work.steps().size();
    List<Store> stores = work.event().kitchen().stores();
    room = work.event().kitchen().room().inCelsius();
    feeders = new int[steps][];
    frozen = new boolean[steps];
    fresh = new double[steps];
    done = new double[steps];
    inStores = new Cooling[steps][stores.size()];
    onTheCounter = new Cooling[steps];
    middle = new double[steps];
    for (BatchStep step : work.steps()) {
      int i = step.index();
      feeders[i] = feeders(work, i);
      frozen[i] = mayFreeze(work.event().kitchen(), step.step());
      for (int feeder : feeders[i]) {
        frozen[i] |= frozen[feeder];
      }
      fresh[i] = cards.fresh(step);
      done[i] = cards.heats(step) ? cards.done(step) : Double.NaN;
      Body body = cards.substance().body(step);
      onTheCounter[i] = cards.coolingOnTheCounter(step, Unsaid.LOOSE);
      middle[i] = body.middleOverMean(Places.ON_THE_COUNTER);
      for (int store = 0; store < stores.size(); store++) {
        inStores[i][store] = Chilling.cooling(cards, step, stores.get(store));
      }
    }
  }

  private static boolean mayFreeze(Kitchen kitchen, Step step) {
    List<String> stores = new ArrayList<>(step.keeps() == null ? List.of() : step.keeps().stores().keySet());
    stores.addAll(step.shelf() == null ? List.of() : step.shelf().stores());
    return step.starts() == StartState.FROZEN
        || stores.stream().anyMatch(name -> isAFreezer(kitchen.store(name)));
  }

  private static boolean isAFreezer(@Nullable Store store) {
    return store != null && store.kind() == Store.Kind.FREEZER;
  }

  /** Whether the food of a step is, was or may be frozen, whose ice its mean does not tell. */
  boolean wasFrozen(int step) {
    return frozen[step];
  }

  /** How warm what is fresh goes into a step, C. */
  public double fresh(int step) {
    return fresh[step];
  }

  /** The steps whose food goes straight into a step, by their indexes. */
  public int[] feeders(int step) {
    return feeders[step].clone();
  }

  private static int[] feeders(Work work, int step) {
    return work.into(step)
        .stream()
        .filter(BatchLink::carriesFood)
        .mapToInt(BatchLink::from)
        .filter(from -> work.steps().get(from).dish().food())
        .toArray();
  }

  /**
   * How warm the food of each step is as it begins, C.
   *
   * @param begins filled by the step's index
   */
  public void follow(Timetable times, double[] begins) {
    for (int step = 0; step < begins.length; step++) {
      double sum = 0;
      for (int feeder : feeders[step]) {
        sum += waited(times, feeder, begins[feeder], times.start(step));
      }
      begins[step] = feeders[step].length == 0 ? fresh[step] : sum / feeders[step].length;
    }
  }

  /** The food of a step that began so warm, as it is at a moment after its end. */
  public double waited(Timetable times, int step, double began, int until) {
    double now = ended(times, step, began);
    for (int part = 0; part < times.parts(step); part++) {
      int minutes = Math.min(times.to(step, part), until) - times.from(step, part);
      now = minutes > 0 ? after(step, times.place(step, part), minutes, now) : now;
    }
    return now;
  }

  private double ended(Timetable times, int step, double began) {
    return Double.isNaN(done[step])
        ? after(step, times.store(step), times.end(step) - times.start(step), began)
        : done[step];
  }

  /** Whether a step is on an oven, a burner or in a machine that makes it hot. */
  public boolean isHeated(int step) {
    return !Double.isNaN(done[step]);
  }

  /**
   * How warm the middle of heated food is taken to be as it comes off the heat, so that it is right once the first minutes are
   * over, C: then it cools as the mean does, but from somewhat more.
   */
  public double hot(int step) {
    return room + (done[step] - room) * middle[step];
  }

  /** Minutes until food has got down to a temperature, C, in a place; infinite where it never does. */
  public double minutesTo(int step, int place, double now, double to) {
    if (place == KEPT_WARM) {
      return now <= to ? 0 : Double.POSITIVE_INFINITY;
    }
    return cooling(step, place).minutesTo(now, to);
  }

  /** How warm food is after some minutes in a place, C. */
  public double after(int step, int place, int minutes, double now) {
    return place == KEPT_WARM ? now : cooling(step, place).after(minutes, now);
  }

  private Cooling cooling(int step, int place) {
    return place == COUNTER ? onTheCounter[step] : inStores[step][place];
  }
}
