package ovenloom.cli.page;

import java.util.List;
import ovenloom.cli.sheet.Act;

/**
 * A line of the run sheet with its box.
 *
 * @param key the same for the same line of the same plan
 * @param at when, in ISO 8601; with its offset where the event has a zone
 * @param time as the clock on the wall shows it
 * @param whose cooks that see it, where each has a sheet
 */
public record Ticked(String key, String at, String time, Act act, List<String> whose) {

  public Ticked {
    whose = List.copyOf(whose);
  }

  /** {@code Greta, Tom}. */
  public String who() {
    return String.join(", ", whose);
  }
}
