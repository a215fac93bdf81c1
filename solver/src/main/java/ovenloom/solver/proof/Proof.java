package ovenloom.solver.proof;

import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Extents;

/** What CP-SAT can show of an event: that there is no plan, and which claims clash; or how good a plan can be at most. */
public final class Proof {

  /** In CP-SAT's own seconds, about a second of a clock each. */
  private static final double TO_REFUTE = 2;
  static final double AT_THE_TABLE = 1;
  static final double WISHES = 3;

  private final Extents extents;
  private volatile @Nullable Solving running;
  private volatile @Nullable List<Claim> clash;
  private volatile @Nullable Bound bound;
  private volatile boolean stopped;

  /** Nothing is shown before it runs. */
  public Proof(Extents extents) {
    this.extents = extents;
  }

  /** Shows what it can, the same each time if nobody stops it; nothing where CP-SAT is not there. */
  public void run() {
    refute();
    if (clash == null) {
      findBound(1);
    }
  }

  /** Shows that there is no plan, if it can. */
  public void refute() {
    if (NativeLibrary.isLoaded()) {
      Refutation refutation = new Refutation(extents, this::isRefuted);
      if (refutation.isShown(claim -> true)) {
        clash = refutation.clash();
      }
    }
  }

  /**
   * Shows how good a plan can be at most, where there is one.
   *
   * @param part of the time it takes at most, 0 to 1
   */
  public void findBound(double part) {
    if (NativeLibrary.isLoaded() && !stopped) {
      Bounds bounds = new Bounds(extents);
      long atTheTable = shown(part * AT_THE_TABLE, bounds::atTheTable);
      bound = new Bound(atTheTable, 0);
      bound = new Bound(atTheTable, shown(part * WISHES, solving -> bounds.wishes(atTheTable, solving)));
    }
  }

  private long shown(double limit, ToLongFunction<Solving> question) {
    return stopped ? 0 : question.applyAsLong(begin(limit));
  }

  private boolean isRefuted(Supplier<Relaxation> relaxation) {
    if (stopped) {
      return false;
    }
    Solving solving = begin(TO_REFUTE);
    solving.solve(relaxation.get().model());
    return solving.isRefuted();
  }

  private Solving begin(double limit) {
    Solving solving = new Solving(limit);
    running = solving;
    return solving;
  }

  /** Ends it soon, with what it has shown so far. Another thread may call it, and again: a question just being put may not hear it. */
  public void stop() {
    stopped = true;
    Solving now = running;
    if (now != null) {
      now.stop();
    }
  }

  /** The claims that clash, so that there is no plan; null where that is not shown. */
  public @Nullable List<Claim> clash() {
    return clash;
  }

  /** How good a plan can be at most; null where nothing is shown. */
  public @Nullable Bound bound() {
    return bound;
  }

  /** Whether it is shown that no plan is better than one with this score. */
  public boolean isBest(Score score) {
    Bound shown = bound;
    return shown != null && score.breaks() == 0 && shown.isReached(score);
  }
}
