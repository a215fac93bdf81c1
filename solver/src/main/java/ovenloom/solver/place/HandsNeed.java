package ovenloom.solver.place;

import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.HandsOn.Act;

/**
 * Hands that a run needs.
 *
 * @param act what they do
 * @param from minutes after the run's start; for one at the end, before its end, below 0
 * @param minutes for how long; {@link #TO_THE_END} for all of it
 * @param slip minutes it may slip either way
 * @param cooks how many
 * @param skill that one of them has
 */
public record HandsNeed(Act act, int from, int minutes, int slip, int cooks, @Nullable String skill) {

  /** From end to end. */
  static final int TO_THE_END = Integer.MAX_VALUE;

  /** When they begin in a run of so many minutes, counted from its start. */
  int offset(int booked) {
    return from < 0 ? booked + from : from;
  }

  /** For how long, in a run of so many minutes. */
  int lasting(int booked) {
    return minutes == TO_THE_END ? booked : minutes;
  }

  /** Whether the oven's door is all they see to. */
  boolean isDoor() {
    return act != Act.WORK;
  }
}
