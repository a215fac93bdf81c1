package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Warmth;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;
import ovenloom.solver.timeline.Presence;

/** What each oven does over time, from the bakes in it: preheats, turns of the dial, holds, and when it is off. */
public final class DialLog {

  private static final int MORNING = 4 * 60;
  private static final int DAY = 24 * 60;

  private final Event event;
  private final Presence there;

  /** Logs for an event. */
  public DialLog(Event event) {
    this.event = event;
    there = Crew.there(event.cooks());
  }

  /** One log for each oven that is used. */
  public List<OvenLog> of(Draft draft) {
    List<OvenLog> logs = new ArrayList<>();
    for (int oven = 0; oven < event.kitchen().ovens().size(); oven++) {
      List<Block> blocks = blocks(draft, oven);
      if (!blocks.isEmpty()) {
        logs.add(log(event.kitchen().ovens().get(oven), blocks, leftOff(draft, oven)));
      }
    }
    return logs;
  }

  /**
   * Bakes at one mark that overlap or touch.
   *
   * @param holds whether the first of them only waits in there
   */
  record Block(Setting mark, String mode, int from, int to, boolean holds) {}

  static List<Block> blocks(Draft draft, int oven) {
    List<Block> stages = new ArrayList<>();
    for (int run = 0; run < draft.choice.length; run++) {
      BakeChoice choice = draft.choice[run];
      if (choice != null && choice.oven() == oven) {
        for (int stage = 0; stage < choice.marks().size(); stage++) {
          int from = draft.start[run] + choice.bake().from(stage);
          int to = from + choice.bake().minutes(stage);
          stages.add(new Block(choice.marks().get(stage), choice.mode(), from, to, false));
        }
        Setting hold = choice.hold().mark();
        if (choice.held() > 0 && hold != null) {
          stages.add(
              new Block(hold, choice.mode(), draft.end[run], draft.end[run] + choice.held(), true));
        }
      }
    }
    stages.sort(Comparator.comparingInt(Block::from).thenComparingInt(Block::to));
    List<Block> blocks = new ArrayList<>();
    for (Block stage : stages) {
      Block last = blocks.isEmpty() ? null : blocks.getLast();
      if (last != null && joins(last, stage)) {
        blocks.set(blocks.size() - 1,
            new Block(last.mark(), last.mode(), last.from(), Math.max(last.to(), stage.to()), last.holds()));
      } else {
        blocks.add(stage);
      }
    }
    return blocks;
  }

  /** When an oven is switched off over food that waits in it. */
  private static Set<Integer> leftOff(Draft draft, int oven) {
    Set<Integer> moments = new TreeSet<>();
    for (int run = 0; run < draft.choice.length; run++) {
      BakeChoice choice = draft.choice[run];
      if (choice != null && choice.oven() == oven && choice.held() > 0 && choice.hold().mark() == null) {
        moments.add(draft.end[run]);
      }
    }
    return moments;
  }

  /**
   * How often the ovens' dials are turned to another mark, but for the first mark of each oven and for the stages of a
   * bake.
   */
  public static int turns(Draft draft) {
    int turns = 0;
    for (int oven = 0; oven < draft.runs().event().kitchen().ovens().size(); oven++) {
      List<Block> blocks = blocks(draft, oven);
      for (int i = 1; i < blocks.size(); i++) {
        Block before = blocks.get(i - 1);
        Block block = blocks.get(i);
        boolean ofABake = before.to() == block.from() && !block.holds();
        turns += ofABake || before.mark().equals(block.mark()) ? 0 : 1;
      }
    }
    return turns;
  }

  private static boolean joins(Block one, Block next) {
    return one.mark().equals(next.mark()) && one.mode().equals(next.mode()) && next.from() <= one.to();
  }

  private OvenLog log(Oven oven, List<Block> blocks, Set<Integer> leftOff) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      Block before = i == 0 ? null : blocks.get(i - 1);
      int changed = 0;
      if (before == null || holdsAMorning(before.to(), block.from())) {
        int preheat = oven.warmth().minutes(oven.warmth().room(), block.mark().temperature());
        add(spans, Doing.WARMING, block, block.from() - preheat, block.from());
      } else if (leftOff.contains(before.to())) {
        int gap = block.from() - before.to();
        int preheat = oven.warmth().preheat(before.mark().temperature(), block.mark().temperature(), gap);
        add(spans, Doing.WARMING, block, block.from() - preheat, block.from());
      } else if (before.to() < block.from()) {
        bridge(spans, oven, before, block);
      } else {
        changed = change(spans, oven.warmth(), before, block, block.from(), block.to());
      }
      add(spans, Doing.AT, block, block.from() + changed, block.to());
    }
    return new OvenLog(oven.name(), merged(spans));
  }

  private void bridge(List<Span> spans, Oven oven, Block before, Block next) {
    int preheat = Standby.preheat(
        oven, there, before.mark().temperature(), next.mark().temperature(), before.to(), next.from());
    if (preheat != Standby.HELD) {
      add(spans, Doing.WARMING, next, next.from() - preheat, next.from());
    } else {
      int changed = change(spans, oven.warmth(), before, next, before.to(), next.from());
      add(spans, Doing.AT, next, before.to() + changed, next.from());
    }
  }

  /** Adds the minutes in which the oven gets from one mark to the next, within a stretch; says how many. */
  private static int change(List<Span> spans, Warmth warmth, Block before, Block next, int from, int to) {
    int minutes = Math.min(to - from, warmth.minutes(before.mark().temperature(), next.mark().temperature()));
    add(spans, isHotter(next, before) ? Doing.WARMING : Doing.COOLING, next, from, from + minutes);
    return minutes;
  }

  private static boolean isHotter(Block one, Block other) {
    return one.mark().temperature().compareTo(other.mark().temperature()) > 0;
  }

  private static void add(List<Span> spans, Doing doing, Block block, int from, int to) {
    if (from < to) {
      spans.add(new Span(doing, block.mark(), block.mode(), new Stretch(from, to)));
    }
  }

  private static List<Span> merged(List<Span> spans) {
    List<Span> merged = new ArrayList<>();
    for (Span span : spans) {
      Span last = merged.isEmpty() ? null : merged.getLast();
      boolean same = last != null
          && last.doing() == span.doing()
          && last.mark().equals(span.mark())
          && last.mode().equals(span.mode())
          && last.when().to() == span.when().from();
      if (same && last != null) {
        merged.set(merged.size() - 1,
            new Span(span.doing(), span.mark(), span.mode(),
                new Stretch(last.when().from(), span.when().to())));
      } else {
        merged.add(span);
      }
    }
    return merged;
  }

  private static boolean holdsAMorning(int from, int to) {
    int next = Math.floorDiv(from - MORNING + DAY - 1, DAY) * DAY + MORNING;
    return next < to;
  }
}
