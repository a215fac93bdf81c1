package ovenloom.solver.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Bound;
import ovenloom.solver.place.Extents;
import ovenloom.solver.supper.Suppers;

/** By hand: supper is at 19:00, food without {@code keeps} waits a quarter of an hour, and one cook is there from noon to 20:00. */
class ProofTest {

  private static final String TWO_SAUCES = """
        - {dish: Foam, steps: [{do: whip, takes: 30 min, hands: throughout}]}
        - {dish: Sauce, steps: [{do: beat, takes: 30 min, hands: throughout}]}
        - {dish: Bread, steps: [{do: cut, takes: 5 min, hands: throughout, keeps: {counter: 5 h}}]}
      """;

  /** Each window of one alone has room for it; no window load is too much, since either may go first. */
  private static final String TWO_MARKS = """
        - {dish: Pie, arrives: warm, steps: [{do: bake, takes: 60 min, bake: {at: 400 F}, in: 9x13 in dish, keeps: {counter: 20 min}}]}
        - {dish: Cake, arrives: warm, steps: [{do: bake, takes: 60 min, bake: {at: 300 F}, in: 9x13 in dish, keeps: {counter: 20 min}}]}
      """;

  @TempDir
  private Path folder;

  private Event event(String dishes) throws IOException {
    return Suppers.withDishes(folder, dishes);
  }

  private static Proof proof(Event event) {
    Proof proof = new Proof(Extents.of(event));
    proof.run();
    return proof;
  }

  private static List<Claim> clash(Event event) {
    return Objects.requireNonNull(proof(event).clash(), "a clash");
  }

  @Test
  void two_dishes_whipped_at_the_last_minute_clash_over_hands_and_what_keeps() throws IOException {
    assertThat(clash(event(TWO_SAUCES))).extracting(claim -> claim.kind() + " " + claim.step())
        .containsExactlyInAnyOrder(
            "KEEPS Foam/whip", "KEEPS Sauce/beat", "TAKES Foam/whip", "TAKES Sauce/beat");
  }

  @Test
  void two_bakes_at_two_marks_clash_over_one_oven_where_no_window_is_too_full() throws IOException {
    Event event = event(TWO_MARKS);

    assertThat(WindowLoads.of(event)).isEmpty();
    assertThat(clash(event)).extracting(Claim::what).contains("the oven racks");
  }

  /**
   * There are two bowls. Each is beaten until 18:25 at the soonest and poured at 18:40 at the soonest, so that both are in theirs from 18:25
   * to 18:40.
   */
  private static final String TWO_BOWLS_FOR_THREE = """
        - {dish: Foam, arrives: cold, tags: [not tcs], steps: [
            {do: beat, takes: 30 min, in: {mixing bowl: 2}}, {do: pour, takes: 5 min, in: 9x13 in dish}]}
        - {dish: Cream, arrives: cold, tags: [not tcs], steps: [
            {do: beat, takes: 30 min, in: mixing bowl}, {do: pour, takes: 5 min, in: 9x13 in dish}]}
      """;

  @Test
  void two_dishes_that_must_be_in_the_same_bowls_at_once_clash_over_them() throws IOException {
    assertThat(clash(event(TWO_BOWLS_FOR_THREE))).extracting(Claim::what)
        .contains("mixing bowl (2 of 2)", "mixing bowl (1 of 2)")
        .doesNotContain("9x13 in dish (1 of 2)");
  }

  /** One place to put something down, and each rests for half an hour in the last three quarters before supper. */
  @Test
  void two_dishes_that_rest_at_once_clash_over_the_only_place_on_the_worktop() throws IOException {
    Event event = Suppers.read(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        kitchen: {landing: 1, vessels: {board: 2}}
        cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
        dishes:
          - {dish: Ham, arrives: cool, tags: [not tcs], steps: [{do: rest, takes: 30 min, in: board}]}
          - {dish: Tongue, arrives: cool, tags: [not tcs], steps: [{do: rest, takes: 30 min, in: board}]}
        """);

    assertThat(clash(event)).extracting(Claim::what)
        .contains("the worktop (1 of 1 places)");
  }

  /**
   * The first is poured by 18:25 at the soonest, and the second takes 25 minutes: with 10 minutes of washing the bowl they end at 19:00.
   */
  @Test
  void a_bowl_that_has_to_be_washed_between_two_dishes_is_too_late_by_a_minute() throws IOException {
    assertThat(proof(oneBowl(10)).clash()).isNull();
    assertThat(clash(oneBowl(11))).extracting(Claim::what).contains("bowl (1 of 1)");
  }

  private Event oneBowl(int wash) throws IOException {
    String dish = """
          - {dish: %s, arrives: cool, tags: [not tcs], steps: [
              {do: beat, takes: 20 min, hands: throughout, in: bowl}, {do: pour, takes: 5 min, in: jug, keeps: {counter: 20 min}}]}
        """;
    return Suppers.read(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        kitchen: {landing: 9, vessels: {bowl: {count: 1, wash: %d min}, jug: 2}}
        cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
        dishes:
        """.formatted(wash) + dish.formatted("Foam") + dish.formatted("Cream"));
  }

  /** It is poured by 18:30, as it keeps for a quarter of an hour on the counter at least; that it is washed afterwards needs no hours. */
  @Test
  void a_pot_that_is_there_until_it_is_empty_need_not_be_there_for_its_wash() throws IOException {
    assertThat(proof(Suppers.read(folder,
        """
            ovenloom: 1
            event: Supper
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen: {landing: 9, vessels: {pot: {count: 1, wash: 5 min, hours: {on the day: 12:00-18:30}}, jug: 1}}
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - {dish: Foam, arrives: cool, tags: [not tcs], steps: [
                  {do: stir, takes: 20 min, hands: throughout, in: pot}, {do: pour, takes: 5 min, in: jug, keeps: {counter: 15 min}}]}
            """))
        .clash()).isNull();
  }

  /** Each is chilled for an hour and stands out for a quarter of one at most; so both are in the fridge at 18:30. */
  @Test
  void two_dishes_that_do_not_fit_beside_each_other_clash_over_the_only_shelf() throws IOException {
    assertThat(proof(inTheFridge(2)).clash()).isNull();
    assertThat(clash(inTheFridge(1))).extracting(Claim::what).contains("room in the fridge");
  }

  private Event inTheFridge(int shelves) throws IOException {
    return Suppers.read(folder,
        """
            ovenloom: 1
            event: Supper
            guests: 4
            courses: [{name: supper, at: 2026-11-20 19:00}]
            kitchen:
              landing: 9
              cold: [{name: fridge, holds: 4 C, shelves: {count: %d, size: 40 x 30 x 20 cm}}]
              vessels: {tin: {count: 2, size: 25 x 25 x 8 cm}}
            cooks: [{name: Cook, hours: {on the day: 12:00-20:00}}]
            dishes:
              - {dish: Jelly, arrives: cool, tags: [not tcs], steps: [{do: set, takes: 60 min, cold: fridge, in: tin}]}
              - {dish: Cream, arrives: cool, tags: [not tcs], steps: [{do: set, takes: 60 min, cold: fridge, in: tin}]}
            """
            .formatted(shelves));
  }

  @Test
  void a_clash_is_one_by_itself_and_none_without_any_one_of_its_claims() throws IOException {
    for (String dishes : List.of(TWO_SAUCES, TWO_MARKS, TWO_BOWLS_FOR_THREE)) {
      Extents extents = Extents.of(event(dishes));
      Refutation refutation = new Refutation(extents, ProofTest::isRefuted);
      List<Claim> clash = refutation.clash();

      assertThat(refutation.isShown(clash::contains)).isTrue();
      assertThat(clash).allSatisfy(dropped -> {
        List<Claim> others = new ArrayList<>(clash);
        others.remove(dropped);
        assertThat(refutation.isShown(others::contains)).as("without %s", dropped).isFalse();
      });
    }
  }

  private static boolean isRefuted(Supplier<Relaxation> relaxation) {
    Solving solving = new Solving(1);
    solving.solve(relaxation.get().model());
    return solving.isRefuted();
  }

  /**
   * Half an hour of hands in the last hour: 30. Nobody else is there, so all of it is crowded: 60. 30 minutes on the day: 1. It is whipped
   * at the last minute, so that nothing waits.
   */
  @Test
  void work_that_must_fall_into_the_last_hour_costs_all_its_minutes() throws IOException {
    Bound bound = proof(event("""
          - {dish: Foam, steps: [{do: whip, takes: 30 min, hands: throughout}]}
        """)).bound();

    assertThat(bound).isEqualTo(new Bound(0, 91));
  }

  /** Each of them must be whipped in the last quarter of an hour or just before, so that one of two is crowded out. */
  @Test
  void a_bound_for_which_there_is_no_time_says_less_than_one_for_which_there_is() throws IOException {
    Extents extents = Extents.of(event(TWO_SAUCES.replace("30 min", "14 min")));

    assertThat(wishes(extents, 0)).isLessThan(wishes(extents, 1));
  }

  private static long wishes(Extents extents, double part) {
    Proof proof = new Proof(extents);
    proof.findBound(part);
    return Objects.requireNonNull(proof.bound(), "a bound").wishes();
  }

  @Test
  void one_that_is_stopped_before_it_begins_shows_nothing() throws IOException {
    Proof proof = new Proof(Extents.of(event(TWO_SAUCES)));

    proof.stop();
    proof.run();

    assertThat(proof.clash()).isNull();
    assertThat(proof.bound()).isNull();
  }

  @Test
  void proofs_are_the_same_each_time() throws IOException {
    Event event = event(TWO_SAUCES);

    assertThat(clash(event)).isEqualTo(clash(event));
  }
}
