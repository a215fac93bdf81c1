package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.solver.proof.Clash;

/** Why there is no plan, in the words of a kitchen. */
public final class ClashText {

  /** Steps that are named; the rest are counted. */
  private static final int NAMED = 6;

  private final Clash clash;
  private final Clock clock;

  private ClashText(Event event, Clash clash) {
    this.clash = clash;
    clock = new Clock(event.calendar());
  }

  /**
   * What clashes, and what would help.
   *
   * @param width of a line, in characters
   */
  public static String of(Event event, Clash clash, int width) {
    ClashText text = new ClashText(event, clash);
    return new Page(width, false).line(text.what()).line(text.help()).toString();
  }

  private String what() {
    int from = clash.when().from();
    String when = "between " + clock.date(from) + ", " + clock.time(from) + ", and "
        + clock.time(clash.when().to(), from);
    return switch (clash.kind()) {
      case TIME ->
        "%s takes %d min, and has to lie %s: what comes before and after it, how long food keeps and who is there leave no more."
            .formatted(clash.steps().getFirst(), clash.asked(), when);
      case MINUTES -> String.format(Locale.ENGLISH, "%s %s are asked for %,d min and there are %,d: %s.",
          Words.capital(when), clash.what(), clash.asked(), clash.there(), steps());
      case ROOM -> "%s %s are asked for %d %% of their room: %s."
          .formatted(Words.capital(when), clash.what(), 100 * clash.asked() / Math.max(1, clash.there()),
              steps());
    };
  }

  private String help() {
    return switch (clash.kind()) {
      case TIME ->
        "It would help to begin sooner, to be there longer, or to let its food or what goes into it keep for longer.";
      case MINUTES, ROOM ->
        "It would help to have more of them then, or to let some of these be done sooner: let their food keep for longer.";
    };
  }

  private String steps() {
    List<String> all = clash.steps().stream().map(BatchStep::toString).toList();
    String named = Words.and(all.subList(0, Math.min(NAMED, all.size())));
    int more = all.size() - NAMED;
    return more > 0 ? named + ", and " + more + " more" : named;
  }
}
