package ovenloom.solver.place;

import java.util.Set;

/**
 * Vessels of one kind, and the runs during which they are taken.
 *
 * @param vessel its number in the kitchen's list
 * @param count how many
 * @param users the runs it is taken by, those that empty it included
 * @param endOfService when it is free at last, if food is in it to the end; else {@link #EMPTIED}
 */
public record Fill(int vessel, int count, Set<Integer> users, int endOfService) {

  /** The end of service of a filling that is emptied before. */
  public static final int EMPTIED = Integer.MIN_VALUE;

  public Fill {
    users = Set.copyOf(users);
  }
}
