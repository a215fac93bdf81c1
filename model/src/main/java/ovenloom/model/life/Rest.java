package ovenloom.model.life;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Work;

/** Where food that is out of its oven goes, by what its menu allows. */
record Rest(Cards cards) {

  /** The air of the counter, where every plan has it stand there and at the table as it is, by itself; else null. */
  @Nullable
  Surroundings after(BatchStep bake) {
    Surroundings air = counter(bake);
    boolean isSure = isOnTheCounter(bake) && onward(bake).stream()
        .allMatch(next -> isAsItWas(bake, next) && counter(next).equals(air));
    return isSure ? air : null;
  }

  private boolean isAsItWas(BatchStep bake, BatchStep next) {
    boolean isByItself = cards.work().into(next.index()).stream().filter(this::carriesFood).count() == 1;
    return isByItself && !cards.heats(next) && next.step().shelf() == null && isOnTheCounter(next)
        && cards.substance().body(next).equals(cards.substance().body(bake));
  }

  private static boolean isOnTheCounter(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps == null
        || (keeps.stores().isEmpty() && keeps.oven() == null && keeps.burner() == null);
  }

  /** The steps its food gets into. */
  private List<BatchStep> onward(BatchStep step) {
    Work work = cards.work();
    BitSet reached = new BitSet();
    reached.set(step.index());
    List<BatchStep> all = new ArrayList<>();
    for (BatchStep next : work.steps()) {
      if (work.into(next.index()).stream().anyMatch(link -> carriesFood(link) && reached.get(link.from()))) {
        reached.set(next.index());
        all.add(next);
      }
    }
    return all;
  }

  private boolean carriesFood(BatchLink link) {
    List<BatchStep> steps = cards.work().steps();
    return link.carriesFood() && steps.get(link.from()).dish().food() && steps.get(link.to()).dish().food();
  }

  private Surroundings counter(BatchStep step) {
    return cards.lids(Unsaid.OPEN).onTheCounter(step);
  }
}
