package ovenloom.solver.exact;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ovenloom.model.check.Checks;
import ovenloom.model.check.Finding;
import ovenloom.model.menu.Event;
import ovenloom.solver.search.Fewer;

/**
 * A small kitchen from which one unit after another was taken, until the rules as CP-SAT understands them leave no plan: with
 * the last unit back there is one.
 *
 * @param taken what is missing, the last of them what decided it
 */
public record JustImpossible(Verdict verdict, List<String> taken) {

  private static final int SECONDS = 10;
  private static final int MOST_TAKEN = 12;

  /** How the taking ended. */
  public enum Verdict {
    /** There was a plan, and with one unit less there is none. */
    IMPOSSIBLE,

    /** It was not decided in time whether there still is one. */
    UNDECIDED,

    /** There still was one when enough was taken. */
    UNFIT
  }

  public JustImpossible {
    taken = List.copyOf(taken);
  }

  /** The small kitchens that are proven to have a plan. */
  public static List<Long> seeds() {
    return Proof.kept(Proof.SMALL).values().stream().filter(Proof::isPossible).map(Proof::kitchen).toList();
  }

  /** What the small kitchen of a seed becomes when so much is taken from it. */
  public static Event without(long seed, List<String> taken, Path folder) throws IOException {
    Event event = SmallKitchen.of(seed, folder);
    for (String what : taken) {
      event = Fewer.all(event)
          .stream()
          .filter(one -> one.what().equals(what))
          .findFirst()
          .orElseThrow()
          .event();
    }
    return event;
  }

  /** Its problem file, before anything was taken. */
  public static String text(long seed, Path folder) throws IOException {
    return SmallKitchen.text(seed, folder);
  }

  /** Takes things by lot, but nothing without which a check refuses the event at once, or CP-SAT cannot be asked. */
  public static JustImpossible of(long seed, Path folder) throws IOException {
    Random lot = new Random(seed);
    List<String> taken = new ArrayList<>();
    Event event = SmallKitchen.of(seed, folder);
    Boolean possible = true;
    while (Boolean.TRUE.equals(possible)) {
      List<Fewer> all = Fewer.all(event).stream().filter(each -> isFit(each.event())).toList();
      if (all.isEmpty() || taken.size() == MOST_TAKEN) {
        return new JustImpossible(Verdict.UNFIT, taken);
      }
      Fewer less = all.get(lot.nextInt(all.size()));
      taken.add(less.what());
      event = less.event();
      possible = Exact.isPossible(event, SECONDS);
    }
    return new JustImpossible(possible == null ? Verdict.UNDECIDED : Verdict.IMPOSSIBLE, taken);
  }

  private static boolean isFit(Event event) {
    return Exact.knows(event) && Checks.of(event).stream().noneMatch(Finding::fatal);
  }
}
