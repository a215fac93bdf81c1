package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Placement;

/** Every pot has a burner to itself, and one that is large enough. */
record Burners() implements KitchenRule {

  @Override
  public String id() {
    return "burners";
  }

  @Override
  public String sentence() {
    return "Every pot has a burner to itself, and one that is large enough.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    plan.plan().placements().forEach(run -> checkPots(plan, run, breaks));
    List<OnBurner> pots = OnBurner.of(plan);
    for (int i = 0; i < pots.size(); i++) {
      checkIsThere(plan, pots.get(i), breaks);
      for (OnBurner other : pots.subList(i + 1, pots.size())) {
        checkApart(pots.get(i), other, breaks);
      }
    }
    return breaks;
  }

  private void checkPots(Case plan, Placement run, List<Break> breaks) {
    List<BatchStep> steps = plan.steps(run);
    if (steps.isEmpty()) {
      return;
    }
    Need.OnBurner need = steps.getFirst().step().burner();
    List<Piece> pots = Piece.of(plan, run);
    int wanted = need == null ? 0 : Math.max(1, pots.size());
    int off = Math.abs(wanted - run.burners().size());
    if (off > 0) {
      breaks.add(Break.of(this, List.of(plan.name(run)), run.when(), off, Break.Unit.PIECES,
          "has " + run.burners().size() + " burners and needs " + wanted));
    }
    for (int pot = 0; need != null && pot < Math.min(wanted, run.burners().size()); pot++) {
      BurnerSize least = pot < pots.size() ? larger(need.atLeast(), pots.get(pot).kind()) : need.atLeast();
      checkSize(plan, run, run.burners().get(pot), least, breaks);
    }
  }

  private static BurnerSize larger(BurnerSize least, @Nullable Vessel vessel) {
    return vessel != null && vessel.burner().compareTo(least) > 0 ? vessel.burner() : least;
  }

  private void checkSize(Case plan, Placement run, String name, BurnerSize least, List<Break> breaks) {
    Burner burner = plan.event().kitchen().burner(name);
    int off = burner == null ? 0 : least.compareTo(burner.size());
    if (burner != null && off > 0) {
      breaks.add(Break.of(this, List.of(plan.name(run), name), run.when(), off, Break.Unit.TIMES,
          "the burner is " + word(burner.size()) + ", and the pot needs a " + word(least) + " one"));
    }
  }

  private static String word(BurnerSize size) {
    return size.name().toLowerCase(Locale.ROOT);
  }

  private void checkIsThere(Case plan, OnBurner pot, List<Break> breaks) {
    if (plan.event().kitchen().burner(pot.burner()) == null) {
      breaks.add(Break.of(this, List.of(pot.who(), pot.burner()), pot.when(), 1, Break.Unit.TIMES,
          "there is no burner " + pot.burner() + " here"));
    }
  }

  private void checkApart(OnBurner one, OnBurner other, List<Break> breaks) {
    Stretch shared = one.when().shared(other.when());
    if (shared != null && one.burner().equals(other.burner())) {
      breaks.add(Break.of(this, List.of(one.burner(), one.who(), other.who()), shared, shared.minutes(),
          Break.Unit.MINUTES, "two pots on one burner for " + shared.minutes() + " min"));
    }
  }
}
