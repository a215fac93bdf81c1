package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.plan.Where;

/** Where food of the planted plans waits. */
final class Waiting {

  static final Where COUNTER = new Where.Counter();

  private Waiting() {}

  static Where in(String store, String shelf) {
    return new Where.OnShelf(store, List.of(shelf));
  }
}
