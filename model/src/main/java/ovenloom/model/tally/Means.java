package ovenloom.model.tally;

import ovenloom.model.audit.score.Figures;
import ovenloom.model.plan.Score;

/** What plans are like in the mean. */
public final class Means {

  private long plans;
  private long atTheTable;
  private long wishes;
  private long hands;
  private long energy;

  void add(Score score, Figures figures) {
    plans++;
    atTheTable += score.atTheTableInAll();
    wishes += score.wishes();
    hands += figures.handsInTheLastHour();
    energy += figures.energy();
  }

  /** Whether there is no plan, so that nothing here means anything. */
  public boolean isEmpty() {
    return plans == 0;
  }

  /** Points. */
  public double atTheTable() {
    return mean(atTheTable);
  }

  /** Points. */
  public double wishes() {
    return mean(wishes);
  }

  /** Minutes of all cooks in the hour before each course. */
  public double hands() {
    return mean(hands);
  }

  /** Tenths of a kilowatt-hour. */
  public double energy() {
    return mean(energy);
  }

  private double mean(long sum) {
    return (double) sum / Math.max(1, plans);
  }
}
