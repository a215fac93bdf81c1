package ovenloom.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.measure.Setting;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;
import ovenloom.solver.supper.Suppers;

/** One cook shapes rolls for an hour, late; a pie that bakes for an hour can go in before, and out after. */
class StayInTheOvenTest {

  private static final int SEVEN = 19 * 60;

  @TempDir
  private Path folder;

  private Found supper(String keeps) throws IOException {
    return Suppers.planned(Suppers.withDishes(folder, """
        - dish: Pie
          arrives: hot
          steps: [{do: bake, takes: 60 min, bake: {at: 375 F}, in: 9x13 in dish, keeps: %s}]
        - dish: Rolls
          steps: [{do: shape, takes: 60 min, hands: throughout, in: half sheet, keeps: {counter: 30 min}}]
        """.formatted(keeps)));
  }

  @Test
  void a_pie_that_may_not_stay_in_the_oven_finds_nobody_to_take_it_out() throws IOException {
    assertThat(supper("{counter: 15 min}").breaks()).isNotEmpty();
  }

  @Test
  void a_pie_that_may_is_left_in_the_oven_and_taken_out_in_the_last_minute() throws IOException {
    Found found = supper("{oven: 45 min}");

    assertThat(found.breaks()).isEmpty();
    Placement bake = found.plan().placement("Pie", "bake", 1);
    assertThat(bake.hands()).extracting(HandsOn::act).containsExactly(HandsOn.Act.LOAD);
    Stay stay = stay(found.plan());
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
    Plan plan = supper("{oven: 45 min}").plan();
    int end = plan.placement("Pie", "bake", 1).when().to();

    assertThat(plan.ovens()).singleElement().satisfies(log -> assertThat(log.spans()).anySatisfy(span -> {
      assertThat(span.doing()).isEqualTo(OvenLog.Doing.COOLING);
      assertThat(span.mark()).isEqualTo(Setting.fahrenheit(175));
      assertThat(span.when().from()).isEqualTo(end);
    }));
  }

  @Test
  void the_search_and_the_reckoning_count_the_same_points_for_it() throws IOException {
    Plan plan = supper("{oven: 45 min}").plan();

    assertThat(Reckoning.of(plan.event(), plan).points()).isEqualTo(plan.score().points());
    assertThat(Reckoning.of(plan.event(), plan).atTheTableInAll()).isEqualTo(plan.score().atTheTableInAll());
  }

  private static Stay stay(Plan plan) {
    List<Stay> stays = plan.stays().stream().filter(each -> each.dish().equals("Pie")).toList();
    assertThat(stays).hasSize(1);
    return stays.getFirst();
  }
}
