package ovenloom.cli.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static ovenloom.cli.sheet.HandPlan.at;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.cli.command.Kitchens;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.RandomHandPlans;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Spread;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** What stands where on racks and shelves. */
class StandsTest {

  private static final long CM = 10_000;
  private static final Where IN_THE_OVEN = new Where.InOven("oven", null);
  private static final Where TOP = new Where.OnShelf("fridge", List.of("top"));

  /** Two dishes of 30 x 20 cm stand on a shelf of 50 x 35 cm only if both are turned, and then 10 cm apart. */
  private static final String SUPPER = """
      ovenloom: 1
      event: Supper
      guests: 8
      courses: [{name: supper, at: 2026-10-10 19:00}]
      kitchen:
        gap: 10 cm
        ovens: [{name: oven, dial: 60 C to 260 C, heats: 180 C in 12 min, racks: {count: 2, size: 55 x 38 cm, clear: 15 cm}}]
        cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 50 x 35 x 20 cm}]}]
        vessels: {dish: {count: 3, size: 30 x 20 x 6 cm}, tray: {count: 2, size: 30 x 20 x 3 cm}, marble slab: 1}
      dishes:
        - dish: Buns
          portions: 4
          steps:
            - {do: bake, takes: 20 min, together: 2, in: tray, bake: {at: 180 C}, keeps: {oven: 1 h, counter: 1 h}}
        - dish: Pie
          steps: [{do: fill, takes: 10 min, in: dish, keeps: {fridge: 1 day, counter: 1 h}}]
        - dish: Jelly
          steps: [{do: pour, takes: 10 min, in: dish, keeps: {fridge: 1 day, counter: 1 h}}]
        - dish: Cheese
          steps: [{do: cut, takes: 10 min, in: marble slab, keeps: {fridge: 1 day, counter: 1 h}}]
      """
      + SheetLines.HOST;

  @TempDir
  private Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  private static HandPlan supper() {
    return supper(SUPPER);
  }

  private static HandPlan supper(String problem) {
    return HandPlan.forProblem(problem)
        .run("Buns/bake", at("18:00"), run -> run.batches(1, 2).racks(0, 1))
        .run("Pie/fill", at("12:00"))
        .run("Jelly/pour", at("13:00"))
        .run("Cheese/cut", at("12:00"));
  }

  private static Stretch from(String from, String to) {
    return new Stretch(at(from), at(to));
  }

  private static List<Stretch> times(Surface surface) {
    return surface.scenes().stream().map(Scene::when).toList();
  }

  @Test
  void a_tray_stands_on_its_rack_for_as_long_as_it_bakes() {
    List<Surface> racks = Stands.of(supper().plan());

    assertThat(racks).extracting(Surface::place, Surface::level)
        .containsExactly(tuple("oven", 0),
            tuple("oven", 1));
    assertThat(racks).allSatisfy(rack -> {
      assertThat(times(rack)).containsExactly(from("18:00", "18:20"));
      assertThat(rack.scenes().getFirst().there()).singleElement()
          .extracting(Stood::vessel, Stood::width, Stood::depth)
          .containsExactly("tray", 30 * CM, 20 * CM);
      liesRight(rack, 10 * CM);
    });
  }

  @Test
  void a_tray_kept_in_the_oven_stays_until_its_own_food_leaves() {
    Plan plan = supper()
        .batchWaits(1, "Buns/bake", IN_THE_OVEN, at("18:40"), new Where.Counter(), at("19:00"))
        .batchWaits(2, "Buns/bake", IN_THE_OVEN, at("19:00"))
        .plan();

    assertThat(Stands.of(plan).stream().map(StandsTest::times)).containsExactly(
        List.of(from("18:00", "18:40")), List.of(from("18:00", "19:00")));
  }

  @Test
  void two_on_a_shelf_are_turned_where_only_that_leaves_the_gap() {
    Surface shelf = Stands.of(chilled(SUPPER)).getLast();

    assertThat(times(shelf)).containsExactly(from("12:10", "13:10"), from("13:10", "18:00"),
        from("18:00", "19:00"));
    assertThat(shelf.scenes().get(1).there()).extracting(Stood::width, Stood::depth)
        .containsExactly(tuple(20 * CM, 30 * CM),
            tuple(20 * CM, 30 * CM));
    assertThat(shelf.scenes().get(1).there().stream().map(Stood::left)).containsExactlyInAnyOrder(0L,
        30 * CM);
    assertThat(shelf.scenes().getLast().there()).extracting(Stood::dish).containsExactly("Jelly");
    liesRight(shelf, 10 * CM);
  }

  @Test
  void what_has_no_room_with_the_gap_is_not_drawn() {
    Surface shelf = Stands.of(chilled(SUPPER.replace("gap: 10 cm", "gap: 10.1 cm"))).getLast();

    assertThat(shelf.scenes().stream().map(scene -> scene.there().size())).containsExactly(1, 0, 1);
  }

  private static Plan chilled(String problem) {
    return supper(problem).waits("Pie/fill", TOP, at("18:00"), new Where.Counter(), at("19:00"))
        .waits("Jelly/pour", TOP, at("19:00"))
        .plan();
  }

  @Test
  void a_vessel_without_a_size_is_not_drawn() {
    Plan plan = supper().waits("Cheese/cut", TOP, at("19:00")).plan();

    assertThat(Stands.of(plan).stream().flatMap(surface -> surface.scenes().stream()))
        .flatExtracting(Scene::there)
        .extracting(Stood::vessel)
        .containsExactly("tray", "tray");
  }

  @Test
  void where_the_plan_says_how_they_stand_they_stand_so() {
    Plan plan = chilled(SUPPER);
    var pie = new Spread.Spot("Pie", "fill", Batches.only(1), 0, new Length(25 * CM), new Length(4 * CM),
        true);
    var jelly = new Spread.Spot("Jelly", "pour", Batches.only(1), 0, new Length(0), new Length(5 * CM),
        false);
    var spread = new Spread("fridge", 0, from("13:10", "18:00"), List.of(jelly, pie));
    Plan told = new Plan(plan.event(), plan.sources(), plan.placements(), plan.stays(), plan.ovens(),
        plan.washes(), List.of(spread), plan.score());

    assertThat(Stands.of(told).getLast().scenes().get(1).there()).containsExactlyInAnyOrder(
        new Stood("Pie", "fill", Batches.only(1), "dish", 25 * CM, 4 * CM, 20 * CM, 30 * CM),
        new Stood("Jelly", "pour", Batches.only(1), "dish", 0, 5 * CM, 30 * CM, 20 * CM));
  }

  /** Plans made by hand may want more on a shelf than it holds; then none of it is drawn. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void at_each_minute_all_that_has_room_lies_beside_one_another(long seed) {
    Plan plan = RandomHandPlans.plan(RandomHandPlans.problem(seed), seed);
    Work work = Work.of(plan.event());
    List<Surface> surfaces = Stands.of(plan);

    assertThat(surfaces).allSatisfy(surface -> liesRight(surface, gap(plan)));
    for (Level level : levels(plan)) {
      for (int minute : moments(plan)) {
        List<String> asked = asked(plan, work, level, minute);
        List<String> drawn = drawn(surfaces, level, minute);
        if (!drawn.isEmpty() || asked.size() < 2) {
          assertThat(drawn).as("%s at %s", level, minute).containsExactlyInAnyOrderElementsOf(asked);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"easter-lamb", "friday-dinner", "village-feast"})
  void of_a_plan_that_was_found_all_of_it_is_there_at_each_minute(String problem) {
    Plan plan = Kitchens.sample(problem, 100, folder);
    Work work = Work.of(plan.event());
    List<Surface> surfaces = Stands.of(plan);

    assertThat(surfaces).isNotEmpty().allSatisfy(surface -> liesRight(surface, gap(plan)));
    for (Level level : levels(plan)) {
      for (int minute : moments(plan)) {
        assertThat(drawn(surfaces, level, minute)).as("%s at %s", level, minute)
            .containsExactlyInAnyOrderElementsOf(asked(plan, work, level, minute));
      }
    }
  }

  /** A rack or shelf; racks have no name. */
  private record Level(String place, int number, String shelf) {}

  /** What a run or wait has of a batch. */
  private record Piece(int batch, String vessel) {}

  private static long gap(Plan plan) {
    return plan.event().kitchen().gap().micrometres();
  }

  private static List<Level> levels(Plan plan) {
    List<Level> all = new ArrayList<>();
    plan.event()
        .kitchen()
        .ovens()
        .forEach(oven -> IntStream.range(0, oven.racks().size())
            .forEach(i -> all.add(new Level(oven.name(), i, ""))));
    plan.event()
        .kitchen()
        .stores()
        .forEach(store -> IntStream.range(0, store.shelves().size())
            .forEach(i -> all.add(new Level(store.name(), i, store.shelves().get(i).name()))));
    return all;
  }

  /** Each at which something may change, and the one before. */
  private static Set<Integer> moments(Plan plan) {
    TreeSet<Integer> all = new TreeSet<>();
    Stream.concat(plan.placements().stream().map(Placement::when),
        plan.stays().stream().flatMap(stay -> stay.parts().stream()).map(Stay.Part::when))
        .flatMap(when -> Stream.of(when.from(), when.to()))
        .forEach(minute -> all.addAll(List.of(minute - 1, minute)));
    return all;
  }

  private static List<String> drawn(List<Surface> surfaces, Level level, int minute) {
    return surfaces.stream()
        .filter(surface -> surface.place().equals(level.place()) && surface.level() == level.number())
        .flatMap(surface -> surface.scenes().stream())
        .filter(scene -> isDuring(scene.when(), minute))
        .flatMap(scene -> scene.there().stream())
        .map(Stood::vessel)
        .toList();
  }

  private static List<String> asked(Plan plan, Work work, Level level, int minute) {
    List<String> all = new ArrayList<>();
    for (Placement run : plan.placements()) {
      List<Piece> pieces = pieces(work, run.dish(), run.step(), run.batches());
      for (int i = 0; i < pieces.size(); i++) {
        boolean isHere = isOnRack(run, i, level)
            || (isDuring(run.when(), minute) && isOnShelf(run, i, level));
        boolean isNow = isDuring(run.when(), minute) || isKept(plan, run, pieces.get(i), minute);
        all.addAll(isHere && isNow ? List.of(pieces.get(i).vessel()) : List.of());
      }
    }
    for (Stay stay : plan.stays()) {
      List<Piece> pieces = pieces(work, stay.dish(), stay.step(), stay.batches());
      for (Stay.Part part : stay.parts()) {
        if (isDuring(part.when(), minute) && part.where() instanceof Where.OnShelf(String store, var shelves)
            && store.equals(level.place())) {
          IntStream.range(0, pieces.size())
              .filter(i -> shelves.get(i).equals(level.shelf()))
              .forEach(i -> all.add(pieces.get(i).vessel()));
        }
      }
    }
    return all.stream().filter(vessel -> hasASize(plan, vessel)).toList();
  }

  private static boolean isOnRack(Placement run, int piece, Level level) {
    Baking baking = run.baking();
    return baking != null && baking.oven().equals(level.place())
        && baking.racks().get(piece) == level.number();
  }

  private static boolean isOnShelf(Placement run, int piece, Level level) {
    return piece < run.shelves().size()
        && run.shelves().get(piece).equals(new ShelfPlace(level.place(), level.shelf()));
  }

  private static boolean hasASize(Plan plan, String name) {
    Vessel vessel = plan.event().kitchen().vessel(name);
    return vessel != null && vessel.size() != null;
  }

  private static boolean isKept(Plan plan, Placement run, Piece piece, int minute) {
    return plan.stays()
        .stream()
        .filter(stay -> stay.dish().equals(run.dish()) && stay.step().equals(run.step())
            && stay.batches().holds(piece.batch()))
        .flatMap(stay -> stay.parts().stream())
        .anyMatch(part -> part.where() instanceof Where.InOven && isDuring(part.when(), minute));
  }

  private static List<Piece> pieces(Work work, String dish, String step, Batches batches) {
    boolean isOne = work.find(dish, step, batches.first()).step().together().oneVessel();
    return IntStream.rangeClosed(batches.first(), isOne ? batches.first() : batches.last())
        .mapToObj(batch -> work.find(dish, step, batch))
        .distinct()
        .flatMap(each -> work.fillingsOf(each.index())
            .stream()
            .flatMap(filling -> Collections
                .nCopies(filling.count(), new Piece(each.batches().first(), filling.vessel()))
                .stream()))
        .toList();
  }

  private static boolean isDuring(Stretch when, int minute) {
    return when.from() <= minute && minute < when.to();
  }

  /** Inside the surface, a gap between any two, and no gap between its scenes. */
  private static void liesRight(Surface surface, long gap) {
    for (Scene scene : surface.scenes()) {
      List<Stood> there = scene.there();
      assertThat(there).allSatisfy(each -> {
        assertThat(each.left()).isBetween(0L, surface.size().width().micrometres() - each.width());
        assertThat(each.front()).isBetween(0L, surface.size().depth().micrometres() - each.depth());
      });
      for (int i = 0; i < there.size(); i++) {
        for (Stood other : there.subList(0, i)) {
          assertThat(apart(there.get(i), other)).as("%s and %s", there.get(i), other)
              .isGreaterThanOrEqualTo(gap);
        }
      }
    }
    List<Stretch> times = times(surface);
    assertThat(times.stream().skip(1).map(Stretch::from))
        .containsExactlyElementsOf(times.stream().limit(times.size() - 1L).map(Stretch::to).toList());
  }

  /** Along the side on which they are further apart; less than nothing where they overlap. */
  private static long apart(Stood one, Stood other) {
    long across = Math.max(other.left() - one.left() - one.width(),
        one.left() - other.left() - other.width());
    long along = Math.max(other.front() - one.front() - one.depth(),
        one.front() - other.front() - other.depth());
    return Math.max(across, along);
  }
}
