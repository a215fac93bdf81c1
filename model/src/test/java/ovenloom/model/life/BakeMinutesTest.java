package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Steps;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;

class BakeMinutesTest {

  private static Work work(Dishes dish) {
    return Work.of(aSupperOf(dish).event());
  }

  private static int minutes(Work work, int celsius, double from) {
    BatchStep bake = work.steps().getLast();
    Oven oven = Objects.requireNonNull(work.event().kitchen().oven("oven"));
    return new BakeMinutes(new Cards(work)).needed(bake, oven, Oven.STILL, List.of(Setting.celsius(celsius)),
        from);
  }

  private static Dishes of(Kind kind, int thick, int minutes, int celsius) {
    return aDish("food").kind(kind, Length.mm(thick)).step(aStep("bake").takes(minutes).bake(celsius));
  }

  /**
   * Greatist, "Basic baked potatoes": 50 to 60 min at 400 F, 60 to 70 at 375, 70 to 90 at 350, 90 to 110 at 325. Minutes times the
   * ratio of the degrees, as some say, would be 63 at 350 F.
   */
  @ParameterizedTest
  @CsvSource({"204, 50, 60", "191, 60, 70", "177, 70, 90", "163, 85, 110"})
  void potatoes_take_longer_in_a_cooler_oven_than_in_proportion(int celsius, int least, int most) {
    Work potatoes = work(aDish("potatoes").kind(Kind.TRAY_OF_PIECES, Length.mm(60))
        .step(aStep("bake").takes(55).needs(untilSoft(204))));

    assertThat(minutes(potatoes, celsius, 20)).isBetween(least, most);
  }

  /** Idaho Potato Commission and others: done at 205 to 210 F inside, 96 to 99 C. */
  private static Need untilSoft(int celsius) {
    Setting mark = Setting.celsius(celsius);
    return new Need.Bake(List.of(new Need.Stage(mark, mark, mark, Oven.STILL, null)), null, null, 1, 1, 0,
        Temperature.celsius(96), Need.Bake.OVERCOOK_PERCENT);
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void hotter_is_never_slower_and_a_colder_start_never_faster(long seed) {
    Random random = new Random(seed);
    Kind kind = List.of(Kind.values()).get(random.nextInt(Kind.values().length));
    Work work = work(
        of(kind, 5 + random.nextInt(120), 10 + random.nextInt(170), 150 + 5 * random.nextInt(15)));

    int before = Integer.MAX_VALUE;
    for (int celsius = 130; celsius <= 240; celsius += 10) {
      int now = minutes(work, celsius, 20);
      assertThat(now).isLessThanOrEqualTo(before);
      before = now;
    }
    for (int from = 2; from < 90; from += 8) {
      assertThat(minutes(work, 180, from)).isGreaterThanOrEqualTo(minutes(work, 180, from + 8.0));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_table_of_a_state_is_never_below_what_food_in_it_needs(long seed) {
    Random random = new Random(seed);
    Work work = work(madeAhead(random));
    BatchStep bake = work.steps().getLast();
    Oven oven = Objects.requireNonNull(work.event().kitchen().oven("oven"));
    Cards cards = new Cards(work);
    BakeMinutes minutes = new BakeMinutes(cards);

    for (Starts.Start start : new Starts(cards).of(bake)) {
      List<Setting> marks = List.of(Setting.celsius(160 + 10 * random.nextInt(6)));
      double warmer = start.celsius() + random.nextInt(12);
      assertThat(minutes.needed(bake, oven, Oven.STILL, marks, start.celsius()))
          .isGreaterThanOrEqualTo(minutes.needed(bake, oven, Oven.STILL, marks, warmer));
    }
  }

  private static Dishes madeAhead(Random random) {
    Keeps keeps = new Keeps(60, null, null, Map.of("fridge", 600));
    Steps cook = aStep("cook").takes(20).in("dish").keeps(keeps);
    return aDish("food").kind(Kind.CASSEROLE, Length.mm(20 + random.nextInt(60)))
        .step(random.nextBoolean() ? cook.bake(180) : cook)
        .step(aStep("bake").takes(20 + random.nextInt(60)).bake(160, 180, 210));
  }

  @Test
  void food_may_come_straight_on_rested_or_chilled_by_where_it_may_wait() {
    Work twice = work(aDish("food").kind(Kind.CASSEROLE, Length.mm(50))
        .step(
            aStep("bake it once").takes(40).bake(180).keeps(new Keeps(60, null, null, Map.of("fridge", 600))))
        .step(aStep("bake").takes(40).bake(180)));
    Work fresh = work(of(Kind.CASSEROLE, 50, 40, 180));

    assertThat(new Starts(new Cards(twice)).of(twice.steps().getLast())).extracting(Starts.Start::state)
        .containsExactlyInAnyOrder(StartState.STRAIGHT_ON, StartState.RESTED, StartState.CHILLED)
        .first()
        .isEqualTo(StartState.RESTED);
    assertThat(new Starts(new Cards(fresh)).of(fresh.steps().getLast())).extracting(Starts.Start::state)
        .containsExactly(StartState.RESTED);
  }

  /** USDA, of turkey: from frozen at least half as long again, which the laws of heat come near. */
  @Test
  void from_the_freezer_it_takes_half_as_long_again() {
    Work bird = work(of(Kind.WHOLE_BIRD, 160, 180, 165));
    BatchStep bake = bird.steps().getLast();

    int thawed = needed(bird, bake, 4);

    assertThat(needed(bird, bake, -18)).isEqualTo((int) Math.ceil(thawed * 1.5));
  }

  private static int needed(Work work, BatchStep bake, double celsius) {
    Oven oven = Objects.requireNonNull(work.event().kitchen().oven("oven"));
    BakeMinutes minutes = new BakeMinutes(new Cards(work));
    return minutes.needed(bake, oven, Oven.STILL, List.of(Setting.celsius(165)), celsius);
  }
}
