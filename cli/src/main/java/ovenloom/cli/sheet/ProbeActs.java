package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.safety.CookTo;

/** Where a card says how hot its food must be inside: a look as soon as it may be and somebody can, a thermometer before it comes off the heat. */
record ProbeActs(Book book, FreeHands hands, Placement run) {

  private static final String WHOLE_ROAST = "whole roast";

  /** Minutes; who probes it so soon need not look before. */
  private static final int SOON = 5;

  List<DishAct> acts() {
    BatchStep step = book.steps(run).getFirst();
    Temperature core = core(step);
    if (core == null) {
      return List.of();
    }
    HandsOn out = unloading();
    int at = Unloading.of(book, run);
    List<String> cooks = out == null ? List.of() : out.cooks();
    long celsius = Math.round(core.inCelsius());
    List<DishAct> acts = new ArrayList<>(List.of(act(at, cooks, step, probe(step, celsius))));
    int look = new Timing(new Clock(book.event().calendar()), step, run).look();
    if (step.step().bake() != null) {
      hands.free(look, at - SOON)
          .ifPresent(minute -> acts.add(
              act(minute, List.of(), step,
                  "Look: at " + celsius + " C inside it is done, and may come out.")));
    }
    return acts;
  }

  private DishAct act(int at, List<String> cooks, BatchStep step, String words) {
    return new DishAct(at, Turn.PROBE, cooks, step, run.batches(), words,
        Places.at(Journey.spot(step, run)));
  }

  private static String probe(BatchStep step, long celsius) {
    String how = isLiquid(step) ? "Stir, then probe: " : "Probe the middle: ";
    String where = step.step().bake() == null ? "on" : "in";
    return how + celsius + " C or more. If it is less, leave it " + where + " and probe again every 5 min.";
  }

  /** As it says; else what is only ever on burners is taken to be. */
  private static boolean isLiquid(BatchStep step) {
    boolean isBaked = step.dish().steps().stream().anyMatch(each -> each.bake() != null);
    Kind kind = step.dish().matter().kind();
    return kind == null ? step.step().burner() != null && !isBaked : kind == Kind.LIQUID;
  }

  private @Nullable HandsOn unloading() {
    return run.hands()
        .stream()
        .filter(hands -> hands.act() == HandsOn.Act.UNLOAD)
        .findFirst()
        .orElse(null);
  }

  /** Whether no step of its dish is on the heat after it, or says how hot it must be inside. */
  private static boolean isLastOnTheHeat(BatchStep step) {
    List<Step> onTheHeat = step.dish().steps().stream().filter(Step::cooks).toList();
    return onTheHeat.stream().noneMatch(each -> said(each) != null)
        && onTheHeat.getLast().equals(step.step());
  }

  private static @Nullable Temperature said(Step step) {
    Need.Bake bake = step.bake();
    Need.OnBurner burner = step.burner();
    return bake != null ? bake.core() : burner != null ? burner.core() : null;
  }

  /** As the card says; of raw food no less than it must be cooked to, but for a whole roast, which may be cooler for longer. */
  static @Nullable Temperature core(BatchStep step) {
    Temperature card = said(step.step());
    CookTo least = CookTo.of(step.dish().tags());
    if (least == null || step.dish().tags().contains(WHOLE_ROAST)) {
      return card;
    }
    if (card == null) {
      return step.step().cooks() && isLastOnTheHeat(step) ? least.temperature() : null;
    }
    return card.compareTo(least.temperature()) < 0 ? least.temperature() : card;
  }
}
