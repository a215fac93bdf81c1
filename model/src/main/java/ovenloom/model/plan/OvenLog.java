package ovenloom.model.plan;

import java.util.List;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;

/**
 * What one oven does over time. Between its spans it is off.
 *
 * @param spans in order, not overlapping
 */
public record OvenLog(String oven, List<Span> spans) {

  /**
   * A stretch with the dial at one mark.
   *
   * @param mode the oven's mode from here on
   */
  public record Span(Doing doing, Setting mark, String mode, Stretch when) {}

  /** What the oven is doing at a mark. */
  public enum Doing {
    /** Heating up to it. */
    WARMING,
    /** Cooling down to it, with the dial already there. */
    COOLING,
    /** At it, food inside or not. */
    AT
  }

  public OvenLog {
    spans = List.copyOf(spans);
  }
}
