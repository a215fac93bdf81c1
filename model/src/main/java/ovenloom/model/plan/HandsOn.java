package ovenloom.model.plan;

import java.util.List;
import ovenloom.model.measure.Stretch;

/** Someone's hands, from end to end of a stretch. */
public record HandsOn(Act act, Stretch when, List<String> cooks) {

  /** What they do. */
  public enum Act {
    LOAD,
    WORK,
    UNLOAD
  }

  public HandsOn {
    cooks = List.copyOf(cooks);
  }
}
