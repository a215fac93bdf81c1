package ovenloom.model.check;

import java.util.List;
import java.util.Set;

/** One kind of thing that can be impossible. */
interface Check {

  /** The parts of the event that must be sound for it to say anything. */
  Set<Part> relyingOn();

  List<Finding> findings(Scene scene);
}
