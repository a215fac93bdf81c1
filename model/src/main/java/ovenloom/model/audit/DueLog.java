package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Temperature;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;

/** What an oven has to do during its uses and between them, and where it lacks the time. */
final class DueLog {

  /** Minutes from which on an oven may be switched off in a gap; in a shorter one it is held. Common practice. */
  static final int LONG_GAP = 30;

  private static final int DAY = 1440;
  private static final int MORNING = 4 * 60;

  /** A gap that is too short by so many minutes. */
  record TooShort(Stretch gap, int by, String what) {}

  private final Oven oven;
  private final List<Cook> cooks;
  private final List<OvenUse> off;
  private final List<Span> spans = new ArrayList<>();
  private final List<TooShort> tooShort = new ArrayList<>();

  /**
   * Works it out.
   *
   * @param uses of this oven, in the order of their start, that share the dial wherever they overlap
   */
  DueLog(Oven oven, List<Cook> cooks, List<OvenUse> uses) {
    this.oven = oven;
    this.cooks = cooks;
    off = uses.stream().filter(use -> use.mark() == null).toList();
    OvenBlock before = null;
    for (OvenBlock block : OvenBlock.of(uses)) {
      int ready = before == null ? preheat(fromTheRoom(block), block) : ready(before, block);
      spans.addAll(block.atItsMark(ready));
      before = block;
    }
  }

  /** In order. */
  List<Span> spans() {
    return spans;
  }

  List<TooShort> tooShort() {
    return tooShort;
  }

  /** From when on the oven is at the block's mark. */
  private int ready(OvenBlock before, OvenBlock block) {
    Stretch gap = new Stretch(before.when().to(), block.when().from());
    if (gap.minutes() == 0 && !block.carriedOverFrom(before).isEmpty()) {
      return turnOver(before, block);
    }
    int change = minutes(before.temperature(), block.temperature());
    boolean cold = holdsAMorning(gap);
    if (!cold && change > gap.minutes()) {
      miss(gap, change, block);
      return turn(before, block, gap, gap.to());
    }
    int preheat = cold ? fromTheRoom(block) : preheat(before, block, gap.minutes());
    int offUntil = offUntil(gap);
    if (cold || offUntil > gap.from()) {
      return preheatIn(new Stretch(offUntil, gap.to()), preheat, block);
    }
    return isHeld(before, block, gap, preheat) ? turn(before, block, gap, gap.from() + change)
        : preheat(preheat, block);
  }

  /** With food inside, to which the minutes of warming or cooling belong. */
  private int turnOver(OvenBlock before, OvenBlock block) {
    int from = block.when().from();
    int end = block.carriedOverFrom(before).stream().mapToInt(use -> use.when().to()).reduce(from, Math::max);
    int ready = Math.min(from + minutes(before.temperature(), block.temperature()), end);
    add(doing(before, block), block, from, ready);
    return ready;
  }

  /** At the beginning of a gap, and then held. */
  private int turn(OvenBlock before, OvenBlock block, Stretch gap, int reached) {
    add(doing(before, block), block, gap.from(), reached);
    add(Doing.AT, block, reached, gap.to());
    return gap.to();
  }

  private int preheatIn(Stretch free, int preheat, OvenBlock block) {
    if (preheat > free.minutes()) {
      miss(free, preheat, block);
    }
    return preheat(Math.min(preheat, free.minutes()), block);
  }

  private int preheat(int minutes, OvenBlock block) {
    int load = block.when().from();
    add(Doing.WARMING, block, load - minutes, load);
    return load;
  }

  private void miss(Stretch gap, int needed, OvenBlock block) {
    tooShort.add(
        new TooShort(gap, needed - gap.minutes(), needed == Warmth.NEVER ? "never gets to " + block.mark()
            : "needs " + needed + " min to be at " + block.mark() + ", and has " + gap.minutes()));
  }

  private void add(Doing doing, OvenBlock block, int from, int to) {
    if (from < to) {
      spans.add(new Span(doing, block.mark(), block.mode(), new Stretch(from, to)));
    }
  }

  private boolean isHeld(OvenBlock before, OvenBlock block, Stretch gap, int preheat) {
    if (gap.minutes() < LONG_GAP || !someoneIsThere(gap.to() - preheat)) {
      return true;
    }
    int change = minutes(before.temperature(), block.temperature());
    long warming = doing(before, block) == Doing.WARMING ? change : 0;
    long held = warming * oven.heating().watts() + (long) (gap.minutes() - change) * oven.holding().watts();
    return held < (long) preheat * oven.heating().watts();
  }

  /** The minute at which hours end counts. */
  private boolean someoneIsThere(int minute) {
    return cooks.stream()
        .flatMap(cook -> cook.hours().stream())
        .anyMatch(hours -> hours.from() <= minute && minute <= hours.to());
  }

  /** Until when food waits in it, switched off. */
  private int offUntil(Stretch gap) {
    int until = off.stream()
        .filter(use -> use.when().overlaps(gap))
        .mapToInt(use -> use.when().to())
        .reduce(gap.from(), Math::max);
    return Math.min(until, gap.to());
  }

  private static boolean holdsAMorning(Stretch gap) {
    int morning = gap.from() + Math.floorMod(MORNING - gap.from(), DAY);
    return gap.contains(morning);
  }

  private int fromTheRoom(OvenBlock block) {
    return minutes(oven.warmth().room(), block.temperature());
  }

  private int minutes(Temperature from, Temperature to) {
    return oven.warmth().minutes(from, to);
  }

  private int preheat(OvenBlock before, OvenBlock block, int gap) {
    return oven.warmth().preheat(before.temperature(), block.temperature(), gap);
  }

  private static Doing doing(OvenBlock before, OvenBlock block) {
    return block.temperature().compareTo(before.temperature()) > 0 ? Doing.WARMING : Doing.COOLING;
  }
}
