package ovenloom.cli.compare;

import ovenloom.cli.compare.Contender.Planned;
import ovenloom.cli.sheet.Words;
import ovenloom.model.audit.score.Figures.Scarce;
import ovenloom.model.menu.Event;

/** What stays short, in a sentence. */
final class Limit {

  /** Per cent of the last hours below which nothing is called short. */
  private static final int SHORT = 50;

  private Limit() {}

  /** Of one, seen from the first; nothing where it has no plan. */
  static String sentence(Contender first, Contender other) {
    Planned planned = other.planned();
    if (planned == null) {
      return "";
    }
    Scarce most = busiest(planned);
    int perCent = busy(planned, most);
    if (perCent < SHORT) {
      return "Nothing is short: %s busiest, in use %d %% of the last two hours."
          .formatted(are(most, other.event()), perCent);
    }
    return Words.capital("%s %sthe limit: busy %d %% of the last two hours."
        .formatted(are(most, other.event()), since(first, most), perCent));
  }

  private static String since(Contender first, Scarce now) {
    Planned before = first.planned();
    if (before == null) {
      return "";
    }
    return busiest(before) == now && busy(before, now) >= SHORT ? "still " : "now ";
  }

  /** Where two are as busy, the first of them. */
  private static Scarce busiest(Planned planned) {
    Scarce most = Scarce.HANDS;
    for (Scarce each : Scarce.values()) {
      most = busy(planned, each) > busy(planned, most) ? each : most;
    }
    return most;
  }

  private static int busy(Planned planned, Scarce what) {
    return planned.figures().busy().getOrDefault(what, 0);
  }

  private static String are(Scarce what, Event event) {
    return switch (what) {
      case HANDS -> "hands are";
      case OVENS -> event.kitchen().ovens().size() == 1 ? "the oven is" : "the ovens are";
      case BURNERS -> event.kitchen().burners().size() == 1 ? "the burner is" : "burners are";
    };
  }
}
