package ovenloom.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DialTimelineLawTest {

  private static final int FROM = 0;
  private static final int TO = 420;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Four in the morning lies inside it, and now and then someone comes only later. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void an_oven_answers_as_one_looked_at_minute_by_minute(long seed) {
    var random = new Random(seed);
    int lent = 100 + random.nextInt(150);
    var open = random.nextBoolean() ? Presence.between(-50, 500)
        : Presence.between(10, 410).except(lent, lent + 1 + random.nextInt(60));
    var someone = random.nextBoolean() ? Presence.between(-50, 500)
        : Presence.between(-50, random.nextInt(240)).and(200 + random.nextInt(100), 500);
    var oven = new DialTimeline(FROM, TO, new AnOvenHeat(), open, someone);
    var naive = new NaiveOven(FROM, TO, new AnOvenHeat(), open, someone);
    int mark = 0;

    for (int turn = 0; turn < 25; turn++) {
      Bake bake = bake(random);
      int asked = random.nextInt(TO + 20) - 10;
      int latest = oven.latestStart(asked, bake);

      assertThat(latest).as("turn %d", turn).isEqualTo(naive.latestStart(asked, bake));
      assertThat(oven.blocker() == Timeline.NOBODY).isEqualTo(latest == asked);
      assertThat(oven.blocker()).isBetween(Timeline.NOBODY, turn - 1);
      if (latest != Timeline.NONE && random.nextInt(3) > 0) {
        oven.take(latest, bake, turn);
        naive.take(latest, bake, turn);
      }
      if (random.nextInt(8) == 0) {
        mark = Math.min(mark, naive.count());
        oven.rollback(mark);
        naive.rollback(mark);
      }
      mark = random.nextInt(4) == 0 ? oven.mark() : mark;
      assertThat(oven.mark()).isEqualTo(naive.count());
    }
  }

  private static Bake bake(Random random) {
    ABake bake = ABake.aBake(4 + random.nextInt(25), random.nextInt(3));
    if (random.nextInt(4) == 0) {
      bake = ABake.aBake(10, AnOvenHeat.HOT).then(4 + random.nextInt(20), AnOvenHeat.MILD);
    }
    if (random.nextInt(5) == 0) {
      bake = ABake.aBake(10, AnOvenHeat.HOT).then(4 + random.nextInt(40), Bake.OFF);
    }
    bake.load(1 + random.nextInt(2)).unload(1 + random.nextInt(2));
    switch (random.nextInt(6)) {
      case 0 -> bake.shutFor(random.nextInt(30));
      case 1 -> bake.opensAt(2 + random.nextInt(2), 1);
      case 2 -> bake.tagged(1 + random.nextInt(2)).avoiding(random.nextInt(3));
      default -> {}
    }
    return bake.bake();
  }
}
