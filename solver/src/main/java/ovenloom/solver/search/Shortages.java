package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Scarce;

/** Tells from a draft that is no plan what there was too little of. */
final class Shortages {

  private Shortages() {}

  /** What the runs that fell short lacked, that by which most minutes are missing first. */
  static List<Found.Shortage> of(Draft draft) {
    Map<Scarce, List<Run>> lacked = new EnumMap<>(Scarce.class);
    for (Run run : draft.runs().runs()) {
      Scarce what = draft.scarce(run.index());
      if (what != null && draft.shortfall(run.index()) > 0) {
        lacked.computeIfAbsent(what, none -> new ArrayList<>()).add(run);
      }
    }
    return lacked.entrySet()
        .stream()
        .sorted(Comparator.comparingLong(each -> -each.getValue()
            .stream()
            .mapToLong(run -> draft.shortfall(run.index()))
            .sum()))
        .map(each -> new Found.Shortage(each.getKey(), names(draft, each.getValue())))
        .toList();
  }

  private static List<String> names(Draft draft, List<Run> runs) {
    return runs.stream()
        .sorted(Comparator.comparingLong(run -> -draft.shortfall(run.index())))
        .map(run -> run.dish().name() + "/" + run.step().name())
        .distinct()
        .toList();
  }
}
