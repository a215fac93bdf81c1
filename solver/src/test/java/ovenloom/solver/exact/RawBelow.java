package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.CookTo;

/** In a cold place, food that must be cooked hotter stands on a lower shelf than all that is there with it. */
final class RawBelow {

  private static final Temperature READY_TO_EAT = new Temperature(0);

  private final Cp cp;
  private final Map<Integer, Temperature> cookTo = new TreeMap<>();

  RawBelow(Cp cp, Steps steps, Shelves shelves, Bending bending) {
    this.cp = cp;
    for (BatchStep step : steps.all()) {
      cookTo.put(step.index(), cookTo(steps, step, bending.cards()));
    }
    List<Shelved> all = shelves.all();
    for (Shelved one : all) {
      for (Shelved other : all) {
        boolean isRawer = of(one).compareTo(of(other)) > 0;
        if (isRawer && one.store().equals(other.store()) && one.store().kind().isCold()) {
          below(one, other);
        }
      }
    }
  }

  private Temperature of(Shelved food) {
    return cookTo.getOrDefault(food.step().index(), READY_TO_EAT);
  }

  /** What its food must be cooked to after it; a dish's own raw food comes with its first step. */
  private Temperature cookTo(Steps steps, BatchStep step, Cards cards) {
    CookTo own = CookTo.of(step.dish().tags());
    boolean isFirst = true;
    Temperature most = READY_TO_EAT;
    for (BatchLink link : steps.work().into(step.index())) {
      if (link.carriesFood()) {
        isFirst &= !steps.all().get(link.from()).dish().equals(step.dish());
        most = hotter(most, cookTo.getOrDefault(link.from(), READY_TO_EAT));
      }
    }
    Temperature before = isFirst && own != null ? hotter(most, own.temperature()) : most;
    return cards.heats(step) ? READY_TO_EAT : before;
  }

  private static Temperature hotter(Temperature one, Temperature other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** Shelves are counted from the top. */
  private void below(Shelved raw, Shelved other) {
    for (List<Literal> ofRaw : raw.places()) {
      for (List<Literal> ofOther : other.places()) {
        for (int shelf = 0; shelf < ofRaw.size(); shelf++) {
          for (int beneath = shelf; beneath < ofOther.size(); beneath++) {
            cp.keepApart(raw.when(), other.when(), ofRaw.get(shelf), ofOther.get(beneath));
          }
        }
      }
    }
  }
}
