package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;
import ovenloom.model.why.Cost;
import ovenloom.model.why.Hold;
import ovenloom.model.why.Next;
import ovenloom.model.why.Trial;

/** What holds a run where it is, in the words of a kitchen. */
final class HoldText {

  private final Plan plan;
  private final Clock clock;
  private final Hold hold;

  HoldText(Plan plan, Hold hold) {
    this.plan = plan;
    this.hold = hold;
    clock = new Clock(plan.event().calendar());
  }

  /** In a sentence or two. */
  String inShort() {
    Trial best = hold.best();
    if (best != null) {
      return wish(best);
    }
    String most = hold.free() == 0 ? "Not a minute later: " : "At most " + hold.free() + " min later: ";
    return most + reasons().getFirst() + ".";
  }

  private String wish(Trial best) {
    Cost cost = Cost.of(plan.score(), best.plan().score(), plan.event().wishes());
    String later = best.minutes() + " min later ";
    if (cost.isNothing()) {
      return Words.capital(later) + "would be as good.";
    }
    return cost.isLess() ? later + "would be better: " + CostText.of(cost) + ". A longer search may see it."
        : "By your wishes: " + later + "would cost " + CostText.of(cost) + ".";
  }

  /** Each as a clause, the first rule's first. */
  List<String> reasons() {
    return hold.breaks().stream().map(this::reason).distinct().toList();
  }

  private String reason(Break broken) {
    return switch (broken.rule()) {
      case "links" -> link(broken);
      case "on time", "in the calendar" ->
        "it must be done by " + time(hold.run().when().to() + hold.free());
      case "one thing at a time" ->
        broken.who().getFirst() + " is then at " + Words.and(others(broken.who().subList(1, 3)));
      default -> plain(broken);
    };
  }

  private String link(Break broken) {
    Next next = hold.next()
        .stream()
        .filter(each -> broken.who().equals(List.of(hold.name(), each.name())))
        .findFirst()
        .orElse(null);
    return next == null ? plain(broken) : follows(next);
  }

  /** {@code rest follows at 12:40}. */
  String follows(Next next) {
    String least = next.least() == 0 ? "" : ", " + next.least() + " min later at least";
    return of(next.name()) + " follows at " + time(next.at()) + least;
  }

  private String plain(Break broken) {
    List<String> others = others(broken.who());
    return (others.isEmpty() ? "" : Words.and(others) + ": ") + broken.what();
  }

  private List<String> others(List<String> who) {
    return who.stream().filter(name -> !name.equals(hold.name())).map(this::of).toList();
  }

  /** Without the dish, where it is the same. */
  private String of(String name) {
    String own = hold.run().dish() + "/";
    return name.startsWith(own) ? name.substring(own.length()) : name;
  }

  private String time(int minute) {
    return clock.time(minute, hold.run().when().to());
  }
}
