package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;

/**
 * Uses of an oven at one mark that overlap or touch.
 *
 * @param uses at a mark, in the order of their start
 */
record OvenBlock(Setting mark, Stretch when, List<OvenUse> uses) {

  /** In order, for uses that share the dial where they overlap. */
  static List<OvenBlock> of(List<OvenUse> uses) {
    List<OvenBlock> blocks = new ArrayList<>();
    for (OvenUse use : uses) {
      OvenBlock last = blocks.isEmpty() ? null : blocks.getLast();
      Setting mark = use.mark();
      if (last != null && mark != null && last.takesOn(mark, use.when())) {
        blocks.set(blocks.size() - 1, last.with(use));
      } else if (mark != null && use.when().minutes() > 0) {
        blocks.add(new OvenBlock(mark, use.when(), List.of(use)));
      }
    }
    return blocks;
  }

  private boolean takesOn(Setting other, Stretch next) {
    return OvenUse.isAt(mark, other) && next.from() <= when.to();
  }

  private OvenBlock with(OvenUse use) {
    List<OvenUse> all = new ArrayList<>(uses);
    all.add(use);
    return new OvenBlock(mark, new Stretch(when.from(), Math.max(when.to(), use.when().to())), all);
  }

  Temperature temperature() {
    return mark.temperature();
  }

  /** The mode of its first use, in which the oven is made ready. */
  String mode() {
    return uses.getFirst().mode();
  }

  /** Those of its uses whose food was inside before the dial was turned. */
  List<OvenUse> carriedOverFrom(OvenBlock before) {
    return uses.stream().filter(use -> before.uses.stream().anyMatch(last -> last.goesOnAs(use))).toList();
  }

  /** Spans at its mark, from a minute on, each in the mode of its use. */
  List<Span> atItsMark(int from) {
    List<Span> spans = new ArrayList<>();
    int at = from;
    for (OvenUse use : uses) {
      if (use.when().to() > at) {
        spans.add(new Span(Doing.AT, mark, use.mode(), new Stretch(at, use.when().to())));
        at = use.when().to();
      }
    }
    return spans;
  }
}
