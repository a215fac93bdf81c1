package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.audit.Break.Unit;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Span;

/** Every oven is hot when the food goes in, and is switched on no sooner and kept on no longer than it pays. */
record WarmingAndCooling() implements KitchenRule {

  @Override
  public String id() {
    return "warming and cooling";
  }

  @Override
  public String sentence() {
    return "Every oven is hot when the food goes in, and is switched on no sooner and kept on no longer than it pays.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    Map<String, List<OvenUse>> uses = OvenUse.of(plan);
    Map<String, List<Span>> logs = new TreeMap<>();
    for (OvenLog log : plan.plan().ovens()) {
      logs.computeIfAbsent(log.oven(), name -> new ArrayList<>()).addAll(log.spans());
      if (plan.event().kitchen().oven(log.oven()) == null) {
        breaks.add(Break.of(this, List.of(log.oven()), null, 1, Unit.TIMES, "there is no such oven here"));
      }
    }
    for (Oven oven : plan.event().kitchen().ovens()) {
      List<OvenUse> own = uses.getOrDefault(oven.name(), List.of());
      List<Span> log = logs.getOrDefault(oven.name(), List.of());
      if (OvenUse.shareTheDial(own)) {
        check(oven.name(), new DueLog(oven, plan.event().cooks(), own), log, breaks);
      }
    }
    return breaks;
  }

  private void check(String oven, DueLog due, List<Span> log, List<Break> breaks) {
    for (DueLog.TooShort each : due.tooShort()) {
      breaks.add(Break.of(this, List.of(oven), each.gap(), each.by(), Unit.MINUTES, each.what()));
    }
    Moments<Entry> both = new Moments<>();
    due.spans().forEach(span -> both.add(span.when(), new Entry(true, words(span))));
    log.forEach(span -> both.add(span.when(), new Entry(false, words(span))));
    List<Wrong> wrongs = new ArrayList<>();
    for (Moments.Still<Entry> still : both.stills()) {
      Wrong next = new Wrong(still.when(), words(still, true), words(still, false));
      Wrong last = wrongs.isEmpty() ? null : wrongs.getLast();
      if (last != null && last.goesOnAs(next)) {
        wrongs.set(wrongs.size() - 1, last.until(next.when().to()));
      } else if (!next.due().equals(next.done())) {
        wrongs.add(next);
      }
    }
    for (Wrong wrong : wrongs) {
      breaks.add(Break.of(this, List.of(oven), wrong.when(), wrong.when().minutes(), Unit.MINUTES,
          "is " + wrong.done() + ", and ought to be " + wrong.due()));
    }
  }

  /** What the oven ought to do, or does. */
  private record Entry(boolean due, String words) {}

  private record Wrong(Stretch when, String due, String done) {

    boolean goesOnAs(Wrong next) {
      return when.abuts(next.when) && due.equals(next.due) && done.equals(next.done);
    }

    Wrong until(int to) {
      return new Wrong(new Stretch(when.from(), to), due, done);
    }
  }

  private static String words(Moments.Still<Entry> still, boolean due) {
    return still.there()
        .stream()
        .filter(entry -> entry.due() == due)
        .map(Entry::words)
        .reduce((one, other) -> one + " and " + other)
        .orElse("off");
  }

  private static String words(Span span) {
    String doing = switch (span.doing()) {
      case WARMING -> "warming to ";
      case COOLING -> "cooling to ";
      case AT -> "at ";
    };
    return doing + span.mark() + " " + span.mode();
  }
}
