package ovenloom.solver.proof;

import ovenloom.model.menu.BatchStep;

/**
 * Something that takes a share of what the kitchen has, somewhere between two minutes.
 *
 * @param earliest minute in which it may begin
 * @param latest minute by which it must have ended
 * @param minutes it takes at least
 * @param amount it takes of it meanwhile: cooks, burners, square millimetres of rack
 */
record Task(BatchStep step, int earliest, int latest, int minutes, long amount) {

  /** What it takes at least between two minutes, wherever it is put: amounts times minutes. */
  long least(int from, int to) {
    int pushedBack = Math.min(minutes, earliest + minutes - from);
    int pushedOn = Math.min(minutes, to - (latest - minutes));
    int inside = Math.min(to - from, Math.min(pushedBack, pushedOn));
    return Math.max(0, inside) * amount;
  }
}
