package ovenloom.solver.proof;

import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;

/**
 * Why there is no plan: in some stretch more is asked of one thing than there is.
 *
 * @param what it is, as a cook would say: {@code hands}, {@code large burners}
 * @param asked how much of it the steps need in that stretch, wherever they are put
 * @param there how much there is, in the same unit
 * @param steps that need it then, those first that need most
 */
public record Clash(
    Kind kind, String what, Stretch when, long asked, long there, List<BatchStep> steps) {

  /** What is counted. */
  public enum Kind {
    /** Minutes of a step that has to begin too late to end in time. */
    TIME,

    /** Minutes of hands, burners or machines. */
    MINUTES,

    /** Square millimetres of rack, times minutes. */
    ROOM
  }

  public Clash {
    steps = List.copyOf(steps);
  }
}
