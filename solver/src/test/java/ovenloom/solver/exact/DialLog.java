package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;

/** Writes down what an oven's dial does in a solved model. */
final class DialLog {

  private static final int LONG = 30;

  private record Use(OvenUse use, Setting mark, String mode, int from, int to) {}

  private final Answers answers;
  private final Oven oven;
  private final List<Use> uses = new ArrayList<>();
  private final List<OvenLog.Span> spans = new ArrayList<>();
  private final List<Stretch> waitsOff = new ArrayList<>();

  DialLog(Answers answers, Oven oven, List<OvenUse> all) {
    this.answers = answers;
    this.oven = oven;
    for (OvenUse use : all) {
      use.at().forEach((mark, at) -> {
        if (answers.is(at)) {
          uses.add(use(use));
        }
      });
    }
    uses.sort(Comparator.comparingInt(Use::from));
  }

  private Use use(OvenUse use) {
    Bake.Way way = use.bake()
        .ways()
        .stream()
        .filter(each -> answers.is(each.taken()))
        .findFirst()
        .orElseThrow();
    Wait wait = use.bake().afterwards();
    if (wait != null && answers.anyIs(wait.off())) {
      waitsOff.add(new Stretch(answers.of(wait.from()), answers.of(wait.to())));
    }
    Setting mark = use.isAWait() ? oven.hold() : way.marks().get(use.stage());
    return new Use(use, mark, way.mode(), answers.of(use.when().from()), answers.of(use.when().to()));
  }

  OvenLog log() {
    Use before = null;
    int until = Integer.MIN_VALUE;
    for (Use use : uses) {
      boolean isNew = before == null || !use.mark.temperature().equals(before.mark.temperature())
          || use.from > until;
      int from = use.from;
      if (isNew) {
        from = begins(before, until, use);
        until = use.to;
      }
      add(Doing.AT, use, Math.max(from, lastEnd()), Math.max(until, use.to));
      until = Math.max(until, use.to);
      before = use;
    }
    return new OvenLog(oven.name(), spans);
  }

  private int lastEnd() {
    return spans.isEmpty() ? Integer.MIN_VALUE : spans.getLast().when().to();
  }

  /** How the oven comes to the mark of a new block, and when it is there. */
  private int begins(@Nullable Use before, int until, Use use) {
    Warmth warmth = oven.warmth();
    if (before == null) {
      add(Doing.WARMING, use, use.from - warmth.minutes(warmth.room(), use.mark.temperature()), use.from);
      return use.from;
    }
    int change = warmth.minutes(before.mark.temperature(), use.mark.temperature());
    Doing doing = use.mark.temperature().compareTo(before.mark.temperature()) > 0 ? Doing.WARMING
        : Doing.COOLING;
    int carriedTo = carriedTo(until, use);
    if (carriedTo > use.from) {
      int ready = Math.min(use.from + change, carriedTo);
      add(doing, use, use.from, ready);
      return ready;
    }
    int gap = use.from - until;
    int preheat = warmth.preheat(before.mark.temperature(), use.mark.temperature(), gap);
    int end = until;
    boolean isOff = waitsOff.stream().anyMatch(wait -> wait.from() == end);
    long held = (doing == Doing.WARMING ? (long) change * oven.heating().watts() : 0)
        + (long) (gap - change) * oven.holding().watts();
    if (isOff || (gap >= LONG && held >= (long) preheat * oven.heating().watts())) {
      add(Doing.WARMING, use, use.from - preheat, use.from);
      return use.from;
    }
    add(doing, use, until, until + change);
    add(Doing.AT, use, until + change, use.from);
    return use.from;
  }

  /** Until when food is in the block that was already in the one before it. */
  private int carriedTo(int until, Use block) {
    int to = block.from;
    for (Use next : uses) {
      boolean isCarried = next.from == until && next.from == block.from
          && Objects.equals(next.mark, block.mark)
          && uses.stream().anyMatch(use -> use.use.isFollowedBy(next.use) && !use.mark.equals(next.mark));
      to = isCarried ? Math.max(to, next.to) : to;
    }
    return to;
  }

  private void add(Doing doing, Use use, int from, int to) {
    if (from < to) {
      spans.add(new OvenLog.Span(doing, use.mark, use.mode, new Stretch(from, to)));
    }
  }
}
