package ovenloom.model.plan;

/**
 * What no plan can be better than.
 *
 * @param atTheTable what every plan loses at the table at least
 * @param wishes the points that every plan has at least that loses just that much at the table
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

  /** Whether a plan may have this score: first it counts what is lost at the table, then the wishes. */
  public boolean allows(Score score) {
    long lost = score.atTheTableInAll();
    return lost > atTheTable || (lost == atTheTable && score.wishes() >= wishes);
  }
}
