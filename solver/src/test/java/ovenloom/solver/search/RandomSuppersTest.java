package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.Where;
import ovenloom.model.watch.Beforehand;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Runs;
import ovenloom.solver.wish.Scorer;

/** Decoder, audit and score, each written by itself, agree on kitchens nobody thought of. */
class RandomSuppersTest {

  private static final int SEEDS = 200;
  private static final int ORDERS = 40;
  private static final Set<Long> PLANNED = new TreeSet<>();
  private static final Set<Long> LEFT_IN_THE_OVEN = new TreeSet<>();

  @TempDir
  private Path folder;

  /** Food goes into the oven as warm as its mean for the decoder, and layer by layer for the audit: that may be some minutes apart. */
  private static final int A_BREAK = 30;

  static LongStream seeds() {
    return LongStream.range(0, SEEDS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_the_decoder_calls_a_plan_the_audit_does_too_and_scores_alike(long seed) throws IOException {
    Event event = supper(seed);
    Cards cards = new Cards(Work.of(event));
    Runs runs = Runs.of(event, new BakeMinutes(cards), step -> 1 + (int) (seed % 4));
    Decoder decoder = new Decoder(runs);
    Scorer scorer = new Scorer(runs);
    Random random = new Random(seed);

    for (int i = 0; i < ORDERS; i++) {
      Draft draft = decoder.decode(decisions(event, random));
      Score score = scorer.of(draft);
      Plan plan = FairCopy.of(draft, List.of(), score);

      if (score.breaks() == 0) {
        assertThat(Audit.of(plan, cards)).isEmpty();
        if (PLANNED.add(seed)) {
          assertThat(Audit.of(event, plan)).as("by an audit that remembers nothing").isEmpty();
        }
        assertThat(Beforehand.of(cards.work())).isEmpty();
        Score counted = Reckoning.of(event, plan);
        assertThat(score.atTheTableInAll()).isEqualTo(counted.atTheTableInAll());
        assertThat(score.points()).isEqualTo(counted.points());
        assertThat(score.early()).isEqualTo(counted.early());
        assertThat(brokenByMoving(cards, plan, random)).isNotEmpty();
        if (leavesFoodInAnOven(plan)) {
          LEFT_IN_THE_OVEN.add(seed);
        }
      } else if (score.breaks() > A_BREAK) {
        assertThat(Audit.of(plan, cards)).as("the decoder fell short by %d", score.breaks()).isNotEmpty();
      }
    }
  }

  /** A law that is never put to the test holds easily. */
  @AfterAll
  static void enough_suppers_had_a_plan_to_judge() {
    assertThat(PLANNED).hasSizeGreaterThan(SEEDS / 4);
    assertThat(LEFT_IN_THE_OVEN).hasSizeGreaterThan(SEEDS / 20);
  }

  private static boolean leavesFoodInAnOven(Plan plan) {
    return plan.stays()
        .stream()
        .flatMap(stay -> stay.parts().stream())
        .anyMatch(part -> part.where() instanceof Where.InOven);
  }

  /** What is broken, but for the score, when one run is moved and nothing moves with it. */
  private static List<Break> brokenByMoving(Cards cards, Plan plan, Random random) {
    List<Placement> runs = new ArrayList<>(plan.placements());
    int moved = random.nextInt(runs.size());
    int minutes = (1 + random.nextInt(30)) * (random.nextBoolean() ? 1 : -1);
    runs.set(moved, Moved.by(runs.get(moved), minutes));
    Plan other = new Plan(plan.event(), List.of(), runs, plan.stays(), plan.ovens(), plan.washes(),
        plan.layouts(), plan.score());
    return Audit.of(other, cards).stream().filter(each -> !each.rule().equals("score")).toList();
  }

  /** The supper of a seed, or of the first after it that could be. */
  private Event supper(long seed) throws IOException {
    for (long each = seed; each < seed + 100 * SEEDS; each += SEEDS) {
      Path file = Files.writeString(folder.resolve("supper.yaml"), RandomSupper.of(each));
      if (ProblemFile.read(file, folder,
          null) instanceof Reading.Understood<Event>(var event, var sources, var notes)) {
        return event;
      }
    }
    throw new AssertionError("none of a hundred suppers could be");
  }

  private static Decisions decisions(Event event, Random random) {
    Decisions decisions = Decisions.open(Work.of(event).steps().size());
    List<Integer> order = new ArrayList<>(IntStream.range(0, decisions.steps()).boxed().toList());
    Collections.shuffle(order, random);
    for (int step = 0; step < decisions.steps(); step++) {
      decisions.setStep(step, order.get(step));
      decisions.setEarlier(step, random.nextInt(12) == 0 ? 5 * random.nextInt(40) : 0);
      decisions.setBake(step, random.nextInt(8) == 0 ? random.nextInt(6) : Decisions.OPEN);
      decisions.setStart(step, random.nextInt(4) == 0 ? random.nextInt(3) : Decisions.OPEN);
      decisions.setStay(step, random.nextInt(4) == 0 ? random.nextInt(6) : Decisions.OPEN);
    }
    return decisions;
  }
}
