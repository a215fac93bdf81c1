package ovenloom.solver.place;

import java.util.List;
import java.util.function.IntUnaryOperator;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.solver.timeline.Footprints;

/**
 * An event as the decoder sees it: runs to place, what ties them, where their food waits, which vessels they fill.
 *
 * @param footprints the shapes its vessels stand on
 * @param runs in an order in which each comes after all it links to
 * @param runOf the run that does each step of the work, by the step's index
 * @param ties one for each link between two runs
 * @param waits one for each place where food may have to wait
 * @param fillings vessels, and the runs they are taken by
 * @param minutes how long its bakes need
 */
public record Runs(
    Event event,
    Work work,
    Footprints footprints,
    List<Run> runs,
    List<Integer> runOf,
    List<Tie> ties,
    List<Wait> waits,
    List<Fill> fillings,
    BakeMinutes minutes) {

  public Runs {
    runs = List.copyOf(runs);
    runOf = List.copyOf(runOf);
    ties = List.copyOf(ties);
    waits = List.copyOf(waits);
    fillings = List.copyOf(fillings);
  }

  /** Lays an event out, with as many batches together as may be. */
  public static Runs of(Event event) {
    return of(event, new BakeMinutes(new Cards(Work.of(event))), step -> Decisions.AS_MANY_AS_MAY);
  }

  /**
   * Lays an event out.
   *
   * @param minutes of its bakes, that may have been used before
   * @param together how many batches share a run at most, by the index of a step's first batch in the work
   */
  public static Runs of(Event event, BakeMinutes minutes, IntUnaryOperator together) {
    return new RunsMaker(event, minutes, together).runs();
  }
}
