package ovenloom.model.watch;

import java.util.List;
import ovenloom.model.life.Track;

/** A rule of food safety, held against one way that food goes. */
interface SafetyRule {

  /** What it finds; nothing where all limits are kept. */
  List<Concern> check(Track track);
}
