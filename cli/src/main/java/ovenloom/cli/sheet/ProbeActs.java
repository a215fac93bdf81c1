package ovenloom.cli.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.safety.CookTo;

/** Where a card says how hot its food must be inside: a thermometer, before it comes off the heat. */
record ProbeActs(Book book, Placement run) {

  private static final String WHOLE_ROAST = "whole roast";

  List<DishAct> acts() {
    BatchStep step = book.steps(run).getFirst();
    Temperature core = core(step);
    if (core == null) {
      return List.of();
    }
    String where = step.step().bake() == null ? "on" : "in";
    String words = "Probe the middle: " + Math.round(core.inCelsius())
        + " C or more. If it is less, leave it " + where
        + " and probe again every 5 min.";
    List<String> cooks = run.hands()
        .stream()
        .filter(hands -> hands.act() == HandsOn.Act.UNLOAD)
        .flatMap(hands -> hands.cooks().stream())
        .distinct()
        .toList();
    return List.of(new DishAct(run.when().to(), Turn.PROBE, cooks, step, run.batches(), words, Places.NONE));
  }

  /** As the card says; of raw food no less than it must be cooked to, but for a whole roast, which may be cooler for longer. */
  private static @Nullable Temperature core(BatchStep step) {
    Need.Bake bake = step.step().bake();
    Need.OnBurner burner = step.step().burner();
    Temperature card = bake != null ? bake.core() : burner != null ? burner.core() : null;
    CookTo least = CookTo.of(step.dish().tags());
    if (card == null || least == null || step.dish().tags().contains(WHOLE_ROAST)) {
      return card;
    }
    return card.compareTo(least.temperature()) < 0 ? least.temperature() : card;
  }
}
