package ovenloom.model.chill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Event;

/**
 * What became of a card.
 *
 * @param event with the step done in the way that was chosen; as it was, if none will do
 * @param way the first that is fast enough; absent where none is
 * @param refused why those before it, or all, will not do, each in a sentence
 */
public record Chosen(Event event, @Nullable WayToChill way, List<String> refused) {

  public Chosen {
    refused = List.copyOf(refused);
  }
}
