package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;
import ovenloom.solver.supper.Decoded;
import ovenloom.solver.supper.Suppers;

/** One cook shapes rolls for an hour, late; a pie that bakes for an hour can go in before, and out after. */
class StayInTheOvenTest {

  private static final int SEVEN = 19 * 60;

  @TempDir
  private Path folder;

  private Event supper(String keeps) throws IOException {
    return Suppers.withDishes(folder, """
        - dish: Pie
          arrives: hot
          steps: [{do: bake, takes: 60 min, bake: {at: 375 F}, in: 9x13 in dish, keeps: %s}]
        - dish: Rolls
          steps: [{do: shape, takes: 60 min, hands: throughout, in: half sheet, keeps: {counter: 30 min}}]
        """.formatted(keeps));
  }

  private Decoded decoded() throws IOException {
    return Decoded.of(supper("{oven: 45 min}"));
  }

  @Test
  void a_pie_that_may_not_stay_in_the_oven_finds_nobody_to_take_it_out() throws IOException {
    assertThat(Suppers.planned(supper("{counter: 15 min}")).breaks()).isNotEmpty();
  }

  @Test
  void a_pie_that_may_is_left_in_the_oven_switched_off() throws IOException {
    Found found = Suppers.planned(supper("{oven: 45 min}"));

    assertThat(found.breaks()).isEmpty();
    assertThat(stay(found.plan()).parts()).singleElement()
        .satisfies(part -> assertThat(part.where()).isEqualTo(new Where.InOven("oven", null)));
  }

  @Test
  void it_is_taken_out_in_the_last_minute() throws IOException {
    Plan plan = decoded().first("Pie/bake").heldInItsOven("Pie/bake").plan();

    Placement bake = plan.placement("Pie", "bake", 1);
    assertThat(bake.hands()).extracting(HandsOn::act).containsExactly(HandsOn.Act.LOAD);
    Stay stay = stay(plan);
    assertThat(stay.parts()).singleElement().satisfies(part -> {
      assertThat(part.where()).isEqualTo(new Where.InOven("oven", Setting.fahrenheit(175)));
      assertThat(part.when().from()).isEqualTo(bake.when().to());
      assertThat(part.when().to()).isEqualTo(SEVEN);
    });
    assertThat(stay.hands()).singleElement().satisfies(hands -> {
      assertThat(hands.act()).isEqualTo(HandsOn.Act.UNLOAD);
      assertThat(hands.when().from()).isEqualTo(SEVEN - 1);
    });
  }

  @Test
  void the_dial_is_turned_to_the_holding_mark_as_the_bake_ends() throws IOException {
    Plan plan = decoded().heldInItsOven("Pie/bake").plan();
    int end = plan.placement("Pie", "bake", 1).when().to();

    assertThat(plan.ovens()).singleElement().satisfies(log -> assertThat(log.spans()).anySatisfy(span -> {
      assertThat(span.doing()).isEqualTo(OvenLog.Doing.COOLING);
      assertThat(span.mark()).isEqualTo(Setting.fahrenheit(175));
      assertThat(span.when().from()).isEqualTo(end);
    }));
  }

  @Test
  void an_oven_that_was_left_off_is_warmed_again_once_its_food_is_out() throws IOException {
    Plan plan = decodedBeforeACake().leftInItsOven("Pie/bake").plan();

    int out = stay(plan).parts().getLast().when().to();
    Stretch warming = plan.ovens().getFirst().spans().get(2).when();
    assertThat(warming.from()).isGreaterThanOrEqualTo(out);
    assertThat(warming.to()).isEqualTo(plan.placement("Cake", "bake", 1).when().from());
  }

  private Decoded decodedBeforeACake() throws IOException {
    return Decoded.of(Suppers.withDishes(folder, """
        - dish: Pie
          steps:
            - {do: bake, takes: 60 min, bake: {at: 375 F}, in: 9x13 in dish, keeps: {oven: 45 min}}
            - {do: cool, takes: 90 min, in: 9x13 in dish}
        - dish: Cake
          steps: [{do: bake, takes: 30 min, bake: {at: 350 F}, in: half sheet}]
        """)).first("Cake/bake").earlier("Pie/cool", 10);
  }

  @Test
  void the_search_and_the_reckoning_count_the_same_points_for_it() throws IOException {
    assertThat(decoded().first("Pie/bake").heldInItsOven("Pie/bake").score().points()).isNotEmpty();
    assertThat(decoded().first("Pie/bake").leftInItsOven("Pie/bake").score().points()).isNotEmpty();
    assertThat(decodedBeforeACake().leftInItsOven("Pie/bake").score().points()).isNotEmpty();
  }

  private static Stay stay(Plan plan) {
    List<Stay> stays = plan.stays().stream().filter(each -> each.step().equals("bake")).toList();
    assertThat(stays).hasSize(1);
    return stays.getFirst();
  }
}
