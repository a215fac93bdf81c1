package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.audit.Break;
import ovenloom.model.measure.Stretch;
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

  /** In a sentence or two, with the first of what breaks. */
  String inShort() {
    Trial best = hold.best();
    return best == null ? broken(reasons().subList(0, 1)) : wish(best);
  }

  /** With all that breaks. */
  String inFull() {
    Trial best = hold.best();
    return best == null ? broken(reasons()) : wish(best) + " " + broken(reasons());
  }

  private String broken(List<String> reasons) {
    String words = String.join("; ", reasons) + ".";
    return hold.free() == 0 ? Words.capital(words) : hold.free() + " min later at most: " + words;
  }

  private String wish(Trial best) {
    Cost cost = Cost.of(plan.score(), best.plan().score(), plan.event().wishes());
    String later = best.minutes() + " min later ";
    if (cost.isNothing()) {
      return later + "would be as good.";
    }
    return cost.isLess() ? later + "would be better: " + CostText.of(cost) + ". A longer search may see it."
        : "By your wishes: " + later + "would cost " + CostText.of(cost) + ".";
  }

  /** Each as a clause, the first rule's first. */
  List<String> reasons() {
    return hold.breaks().stream().map(this::reason).distinct().toList();
  }

  private String reason(Break broken) {
    List<String> who = broken.who();
    return switch (broken.rule()) {
      case "links" -> link(broken);
      case "on time", "in the calendar" -> "it must be done by " + time(limit());
      case "batches in order" -> "the next batch is done at " + time(limit());
      case "keeps" -> food(who.getFirst()) + " would not keep: " + broken.what();
      case "one thing at a time" ->
        who.getFirst() + " is then at " + Words.and(others(who.subList(1, who.size())));
      case "hands" -> who.size() == 2 ? who.getLast() + " is not at work then" : plain(broken);
      case "someone there" -> "nobody is there then" + moved(who);
      case "clean vessels" -> who.size() == 1 ? washed(broken) : plain(broken);
      default -> plain(broken);
    };
  }

  private int limit() {
    return hold.run().when().to() + hold.free();
  }

  private String food(String name) {
    return name.equals(hold.name()) ? "its food" : "food of " + of(name);
  }

  private static String moved(List<String> moves) {
    return moves.getFirst().contains(" goes ") ? ", when " + Words.and(moves) : "";
  }

  private String washed(Break broken) {
    Stretch when = broken.when();
    return when == null ? plain(broken) : broken.who().getFirst() + " is washed at " + time(when.from());
  }

  private String link(Break broken) {
    Next next = hold.next()
        .stream()
        .filter(each -> broken.who().equals(List.of(hold.name(), each.name())))
        .findFirst()
        .orElse(null);
    return next == null ? plain(broken) : follows(next);
  }

  /** {@code rest follows at 12:40}; {@code to the table at 13:30}. */
  String follows(Next next) {
    if (next.run() == null) {
      return "to the table at " + time(next.at());
    }
    String least = next.least() == 0 ? "" : ", at least " + next.least() + " min after it";
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
