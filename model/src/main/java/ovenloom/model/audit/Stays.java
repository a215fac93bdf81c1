package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Stay;

/** Food that waits is somewhere, from the end of its step until the last of it is taken. */
record Stays() implements KitchenRule {

  @Override
  public String id() {
    return "stays";
  }

  @Override
  public String sentence() {
    return "Food that waits is somewhere, from the end of its step until the last of it is taken.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Wait> waits = Wait.all(plan);
    for (Wait wait : waits) {
      check(plan, wait, plan.plan().stays().stream().filter(wait::isThatOf).toList(), breaks);
    }
    for (Stay stay : plan.plan().stays()) {
      if (!stay.parts().isEmpty() && waits.stream().noneMatch(wait -> wait.isThatOf(stay))) {
        String what = "no food of these batches waits there together";
        breaks.add(minutes(plan.name(stay), whole(stay), Math.max(1, whole(stay).minutes()), what));
      }
    }
    return breaks;
  }

  private void check(Case plan, Wait wait, List<Stay> stays, List<Break> breaks) {
    int minutes = wait.when().minutes();
    if (stays.isEmpty() && minutes > 0) {
      String who = wait.steps().getFirst().toString();
      breaks.add(minutes(who, wait.when(), minutes, "it is nowhere for " + minutes + " min"));
    }
    for (Stay stay : stays) {
      times(plan, wait, stay, breaks);
      WaitingPlaces places = new WaitingPlaces(plan, wait, stay);
      places.faults().forEach(fault -> breaks.add(fault(plan, stay, fault)));
    }
    if (stays.size() > 1) {
      Stay second = stays.get(1);
      String what = "it is in " + stays.size() + " places at once";
      breaks.add(Break.of(this, List.of(plan.name(second)), whole(second), stays.size() - 1, Break.Unit.TIMES,
          what));
    }
  }

  private void times(Case plan, Wait wait, Stay stay, List<Break> breaks) {
    int now = wait.when().from();
    int off = 0;
    for (Stay.Part part : stay.parts()) {
      off += Math.abs(part.when().from() - now);
      now = part.when().to();
    }
    off += Math.abs(wait.when().to() - now);
    if (off > 0) {
      String what = "for " + off + " min of its " + wait.when().minutes()
          + " it is nowhere, or in two places, or gone";
      breaks.add(minutes(plan.name(stay), wait.when(), off, what));
    }
  }

  private Break fault(Case plan, Stay stay, WaitingPlaces.Fault fault) {
    return Break.of(this, List.of(plan.name(stay)), whole(stay), fault.off(), fault.unit(), fault.what());
  }

  private Break minutes(String who, Stretch when, int off, String what) {
    return Break.of(this, List.of(who), when, off, Break.Unit.MINUTES, what);
  }

  private static Stretch whole(Stay stay) {
    int from = stay.parts().stream().mapToInt(part -> part.when().from()).min().orElse(0);
    int to = stay.parts().stream().mapToInt(part -> part.when().to()).max().orElse(from);
    return new Stretch(from, to);
  }
}
