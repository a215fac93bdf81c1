package ovenloom.solver.supper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.BakeChoice;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;
import ovenloom.solver.wish.Scorer;

/**
 * A supper decoded once: its runs in the order they are written, each as late as it fits, but for what a test asks.
 * Steps are named {@code Dish/step}, with all their batches, or {@code Dish/step 2}.
 */
public final class Decoded {

  private final Event event;
  private final Runs runs;
  private final Decoder decoder;
  private final Decisions decisions;

  private Decoded(Event event) {
    this.event = event;
    runs = Runs.of(event);
    decoder = new Decoder(runs);
    decisions = Decisions.open(runs.work().steps().size());
  }

  public static Decoded of(Path folder, String text) throws IOException {
    return of(Suppers.read(folder, text));
  }

  public static Decoded of(Event event) {
    return new Decoded(event);
  }

  /** Lets a step end some minutes before it must. */
  public Decoded earlier(String step, int minutes) {
    runsOf(step).forEach(run -> decisions.setEarlier(first(run), minutes));
    return this;
  }

  /** Places a step before all others, but for those that follow it. */
  public Decoded first(String step) {
    List<Integer> first = runsOf(step).stream().map(this::first).toList();
    List<Integer> all = new ArrayList<>(first);
    IntStream.range(0, decisions.steps())
        .map(decisions::step)
        .filter(each -> !first.contains(each))
        .forEach(all::add);
    for (int turn = 0; turn < all.size(); turn++) {
      decisions.setStep(turn, all.get(turn));
    }
    return this;
  }

  /** Bakes a step at a mark, in a mode. */
  public Decoded bakedAt(String step, Setting mark, String mode) {
    for (int run : runsOf(step)) {
      List<BakeChoice> ways = decoder.waysToBake(first(run));
      int way = 0;
      while (way < ways.size() && !isAt(ways.get(way), mark, mode)) {
        way++;
      }
      assertThat(way).as("%s at %s, %s", step, mark, mode).isLessThan(ways.size());
      decisions.setBake(first(run), way);
    }
    return this;
  }

  /** Leaves the food of a bake in its oven, with the dial at its holding mark: the last place but one. */
  public Decoded heldInItsOven(String step) {
    runsOf(step).forEach(run -> decisions.setStay(first(run), places(decoder, first(run)) - 2));
    return this;
  }

  /** Leaves the food of a bake in its oven, switched off. */
  public Decoded leftInItsOven(String step) {
    runsOf(step).forEach(run -> decisions.setStay(first(run), places(decoder, first(run)) - 1));
    return this;
  }

  /** The sorts of places the food of a step may wait in: all ways to wait but not to wait at all. */
  public static int places(Decoder decoder, int step) {
    int atOnce = decoder.takenAtOnce(step);
    return atOnce == Decisions.OPEN ? decoder.waysToWait(step) : atOnce;
  }

  private static boolean isAt(BakeChoice way, Setting mark, String mode) {
    return way.mode().equals(mode) && way.marks().getFirst().equals(mark);
  }

  private int first(int run) {
    return runs.runs().get(run).units().getFirst().index();
  }

  private List<Integer> runsOf(String step) {
    List<Integer> found = runs.runs()
        .stream()
        .filter(run -> name(run).equals(step) || (name(run) + " " + run.batches().first()).equals(step))
        .map(Run::index)
        .toList();
    assertThat(found).as(step).isNotEmpty();
    return found;
  }

  private static String name(Run run) {
    return run.dish().name() + "/" + run.step().name();
  }

  public Draft draft() {
    return decoder.decode(decisions);
  }

  /** As a plan, whether or not it breaks a rule. */
  public Plan plan() {
    Draft draft = draft();
    return FairCopy.of(draft, List.of(), new Scorer(runs).of(draft));
  }

  public Event event() {
    return event;
  }

  /** What the audit finds. */
  public List<Break> breaks() {
    return Audit.of(event, plan());
  }

  /** The score of what the audit, too, calls a plan, and counts alike. */
  public Score score() {
    Plan plan = plan();
    assertThat(Audit.of(event, plan)).isEmpty();
    Score counted = Reckoning.of(event, plan);
    assertThat(plan.score().points()).isEqualTo(counted.points());
    assertThat(plan.score().atTheTableInAll()).isEqualTo(counted.atTheTableInAll());
    assertThat(plan.score().wishes()).isEqualTo(counted.wishes());
    assertThat(plan.score().early()).isEqualTo(counted.early());
    return plan.score();
  }

  /** The points of one wish, before its weight. */
  public long points(Wish wish) {
    return score().points().getOrDefault(wish, 0L);
  }

  /** The plan in a cook's words. */
  public Telling told() {
    return new Telling(plan());
  }

  /** The rules that are broken, as the audit has it; the decoder must know that it fell short of a plan. */
  public List<String> brokenRules() {
    List<String> rules = breaks().stream().map(Break::rule).distinct().toList();
    assertThat(draft().shortfall() > 0).as("the decoder falls short where the audit finds %s", rules)
        .isEqualTo(!rules.isEmpty());
    return rules;
  }

  /** What keeps a step from being later: another step, or {@code nothing}, or {@code hours}. */
  public String blocker(String step) {
    int blocker = draft().blocker(runsOf(step).getFirst());
    return switch (blocker) {
      case -2 -> "nothing";
      case -1 -> "hours";
      default -> name(runs.runs().get(blocker));
    };
  }
}
