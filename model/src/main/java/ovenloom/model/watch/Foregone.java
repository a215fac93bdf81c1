package ovenloom.model.watch;

import java.util.List;
import ovenloom.model.menu.BatchStep;

/** A rule of food safety, held against a step before there is a plan. */
interface Foregone {

  /** What no plan can avoid; nothing where it is not certain. */
  List<Unavoidable> find(BatchStep step);
}
