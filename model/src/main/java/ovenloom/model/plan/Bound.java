package ovenloom.model.plan;

/**
 * What no plan can be better than.
 *
 * @param atTheTable what every plan loses at the table at least
 * @param wishes the points that every plan has at least that loses no more at the table than the one it was proven for
 */
public record Bound(long atTheTable, long wishes) {

  /** Whether no plan is better at the table than one with this score. */
  public boolean isReachedAtTheTable(Score score) {
    return score.atTheTableInAll() <= atTheTable;
  }

  /** Whether no plan is better than one with this score, at the table or by the wishes. */
  public boolean isReached(Score score) {
    return isReachedAtTheTable(score) && score.wishes() <= wishes;
  }
}
