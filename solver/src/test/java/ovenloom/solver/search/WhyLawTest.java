package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Shares;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.why.Hold;
import ovenloom.model.why.Holding;
import ovenloom.model.why.Next;
import ovenloom.model.why.Trial;
import ovenloom.model.why.Trials;

/** Whatever is said to hold a step does, in kitchens nobody thought of. */
class WhyLawTest {

  private static final int SEEDS = 120;
  private static final int PLANS = 20;
  private static final int REASONS = 200;
  private static final TreeSet<Long> PLANNED = new TreeSet<>();
  private static int reasons;

  @TempDir
  private Path folder;

  static LongStream seeds() {
    return LongStream.range(0, SEEDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_step_may_be_as_late_as_is_said_and_a_minute_later_breaks_what_is_said(long seed) throws IOException {
    Path file = Files.writeString(folder.resolve("supper.yaml"), RandomSupper.of(seed));
    Plan plan = ProblemFile.read(file, folder,
        null) instanceof Reading.Understood<Event>(var event, var sources, var notes)
            ? KnownPlan.of(event, new Random(seed))
            : null;

    if (plan != null) {
      PLANNED.add(seed);
      Trials trials = new Trials(plan);
      plan.placements().forEach(run -> check(plan, Holding.of(trials, run), trials));
      addUp(plan.event(), plan);
    }
  }

  private static void check(Plan plan, Hold hold, Trials trials) {
    Placement run = hold.run();
    Trial last = trials.later(run, hold.free());
    assertThat(Audit.of(plan.event(), last.plan())).as("%s is %d min later", hold.name(), hold.free())
        .isEmpty();
    assertThat(start(last.plan(), run)).isEqualTo(run.when().from() + hold.free());

    Trial tooLate = trials.later(run, hold.free() + 1);
    assertThat(Audit.of(plan.event(), tooLate.plan())).isEqualTo(hold.breaks()).isNotEmpty();
    assertThat(start(tooLate.plan(), run)).isEqualTo(run.when().from() + hold.free() + 1);
    assertThat(others(tooLate.plan(), run)).containsExactlyInAnyOrderElementsOf(others(plan, run));
    for (Break reason : hold.breaks()) {
      assertThat(reason.rule()).as("%s: %s", hold.name(), reason)
          .isNotIn("score", "stays", "everything once", "set-points");
      assertThat(reason.what()).doesNotContain("ought to be");
      isTrue(plan, hold, reason);
      reasons++;
    }
  }

  /** Where that can be seen without the audit. */
  private static void isTrue(Plan plan, Hold hold, Break reason) {
    Stretch late = hold.run().when().shiftedBy(hold.free() + 1);
    if (reason.rule().equals("one thing at a time")) {
      long deeds = plan.placements()
          .stream()
          .flatMap(run -> (run.equals(hold.run()) ? Moved.by(run, hold.free() + 1) : run).hands().stream())
          .filter(hands -> hands.cooks().contains(reason.who().getFirst()))
          .map(HandsOn::when)
          .filter(when -> when.overlaps(Objects.requireNonNull(reason.when())))
          .count();
      long washes = plan.washes()
          .stream()
          .filter(wash -> wash.cook().equals(reason.who().getFirst()))
          .count();
      long stays = plan.stays().stream().filter(stay -> !stay.hands().isEmpty()).count();
      assertThat(deeds + washes + stays).as("%s", reason).isGreaterThan(1);
    }
    hold.next()
        .stream()
        .filter(next -> reason.rule().equals("links") && reason.who().getLast().equals(next.name()))
        .filter(next -> reason.who().getFirst().equals(hold.name()))
        .forEach(next -> assertThat(late.to() + next.least()).isGreaterThan(next.at()));
    if (reason.rule().equals("on time")
        && hold.next().stream().anyMatch(next -> next.name().equals(Next.TABLE))) {
      assertThat(late.to()).isGreaterThan(hold.next().getLast().at());
    }
  }

  private static void addUp(Event event, Plan plan) {
    Shares shares = Shares.of(new Cards(Work.of(event)), plan);
    plan.score().points().forEach((wish, points) -> {
      long rounding = wish == Wish.ENERGY ? 3 : 0;
      long twoThroughOneDoor = wish == Wish.CALM ? 10 : 0;
      assertThat(points - sum(shares.of(wish).values())).as("%s", wish)
          .isBetween(-twoThroughOneDoor, rounding);
    });
    assertThat(sum(shares.early().values())).isEqualTo(plan.score().early());
  }

  private static long sum(Iterable<Long> shares) {
    long sum = 0;
    for (long share : shares) {
      sum += share;
    }
    return sum;
  }

  private static int start(Plan plan, Placement run) {
    return plan.placement(run.dish(), run.step(), run.batches().first()).when().from();
  }

  private static List<Stretch> others(Plan plan, Placement run) {
    return plan.placements()
        .stream()
        .filter(each -> !each.dish().equals(run.dish()) || !each.step().equals(run.step())
            || !each.batches().equals(run.batches()))
        .map(Placement::when)
        .toList();
  }

  @AfterAll
  static void enough_was_looked_at() {
    assertThat(PLANNED).hasSizeGreaterThanOrEqualTo(PLANS);
    assertThat(reasons).isGreaterThan(REASONS);
  }
}
