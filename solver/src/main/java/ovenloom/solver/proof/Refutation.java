package ovenloom.solver.proof;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import ovenloom.solver.place.Extents;

/** Whether some claims can all be met, and if not, which of them clash. */
final class Refutation {

  private final Extents extents;

  /** Asks CP-SAT about a relaxation, which is made only if it is asked; whether it has shown that there is no solution. */
  private final Predicate<Supplier<Relaxation>> isRefuted;

  Refutation(Extents extents, Predicate<Supplier<Relaxation>> isRefuted) {
    this.extents = extents;
    this.isRefuted = isRefuted;
  }

  Relaxation model(Predicate<Claim> kept) {
    Relaxation relaxation = new Relaxation(extents, kept);
    Shares.add(relaxation, Stint.of(relaxation), Vessels.add(relaxation));
    Ovens.add(relaxation);
    Worktop.add(relaxation);
    Shelves.add(relaxation);
    return relaxation;
  }

  /** Whether it is shown that not all of these can be met. */
  boolean isShown(Predicate<Claim> kept) {
    return isRefuted.test(() -> model(kept));
  }

  /**
   * Of claims that cannot all be met, as few as may be: some are given up, half of them first, one by one in the end, and taken up again
   * only where nothing would be shown without them.
   */
  List<Claim> clash() {
    List<Claim> left = new ArrayList<>(model(claim -> true).claims());
    for (int some = Math.max(1, left.size() / 2); some >= 1; some /= 2) {
      for (int to = left.size(); to > 0; to -= some) {
        List<Claim> less = new ArrayList<>(left);
        less.subList(Math.max(0, to - some), to).clear();
        Set<Claim> kept = new HashSet<>(less);
        left = isShown(kept::contains) ? less : left;
      }
    }
    return left;
  }
}
