package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.watch.Concern;
import ovenloom.model.watch.Watch;

/** No food is predicted to break a limit of its safety profile. */
record Safe() implements KitchenRule {

  /** What never gets there is this far off. */
  private static final long NEVER = 1440;

  @Override
  public String id() {
    return "safe";
  }

  @Override
  public String sentence() {
    return "All food is safe to eat, as predicted, by the rules that hold.";
  }

  @Override
  public List<Break> check(Case plan) {
    return Watch.over(plan.plan(), plan.life(), plan.openLife()).stream().map(this::broken).toList();
  }

  private Break broken(Concern concern) {
    long off = Math.max(1, (long) Math.ceil(Math.min(NEVER, concern.off())));
    String what = concern.what() + " (" + concern.source() + ".) " + concern.help();
    return Break.of(this, List.of(concern.step().toString()),
        new Stretch(concern.minute(), concern.minute() + 1),
        off, unit(concern.rule()), withoutItsStop(what));
  }

  /** Whoever prints it puts one behind. */
  private static String withoutItsStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  private static Break.Unit unit(Concern.Rule rule) {
    return switch (rule) {
      case COOKED, ROASTED, KEPT_HOT, KEPT_COLD -> Break.Unit.KELVINS;
      case REHEATED, COOLED, LEFT_OUT, THAWED -> Break.Unit.MINUTES;
    };
  }
}
