package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.OvenLog.Doing;
import ovenloom.model.plan.OvenLog.Span;
import ovenloom.model.plan.Placement;

/** An oven switched on, its dial turned, an oven switched off. */
record OvenActs(Book book, Words words, OvenLog log) {

  List<Act> acts() {
    List<Act> acts = new ArrayList<>();
    Span before = null;
    for (Span span : log.spans()) {
      if (before != null && before.when().to() < span.when().from()) {
        acts.add(off(before));
        before = null;
      }
      if (before == null) {
        acts.add(on(span));
      } else if (isTurned(before, span)) {
        acts.add(turned(before, span));
      }
      before = span;
    }
    if (before != null) {
      acts.add(off(before));
    }
    return acts;
  }

  private Act on(Span span) {
    boolean isHot = span.doing() == Doing.AT;
    String how = isHot ? "Switch on, " + setting(span) + "."
        : "Preheat: " + setting(span) + ", ready at " + end(span) + ".";
    return act(span.when().from(), how);
  }

  private Act off(Span last) {
    return act(last.when().to(), "Switch off.");
  }

  private static boolean isTurned(Span before, Span span) {
    return !before.mark().equals(span.mark()) || !before.mode().equals(span.mode());
  }

  private Act turned(Span before, Span span) {
    int up = span.mark().temperature().compareTo(before.mark().temperature());
    String turn = up > 0 ? "Turn up to " : up < 0 ? "Turn down to " : "Turn to ";
    String to = before.mode().equals(span.mode()) ? span.mark().written() : setting(span);
    String ready = span.doing() == Doing.AT ? "." : ": ready at " + end(span) + ".";
    return act(span.when().from(), turn + to + ready + inside(span.when().from()));
  }

  private String inside(int minute) {
    List<String> dishes = book.plan()
        .placements()
        .stream()
        .filter(run -> isInside(run, minute))
        .map(Placement::dish)
        .distinct()
        .toList();
    return dishes.isEmpty() ? ""
        : " " + Words.and(dishes) + (dishes.size() == 1 ? " stays in." : " stay in.");
  }

  private boolean isInside(Placement run, int minute) {
    return run.baking() != null && run.baking().oven().equals(log.oven()) && run.when().from() < minute
        && minute < run.when().to();
  }

  private String setting(Span span) {
    return words.mode(log.oven(), span.mode()) + span.mark().written();
  }

  private String end(Span span) {
    return new Clock(book.event().calendar()).time(span.when().to(), span.when().from());
  }

  private Act act(int at, String what) {
    return new Act(at, Turn.DIAL, List.of(), words.ovenAlone(log.oven()), what,
        Places.at(Set.of(Place.all(log.oven()))));
  }
}
