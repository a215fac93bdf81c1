package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.model.plan.Plan;

/** Of two plans that differ in one thing, one just keeps a limit of food safety, and one just does not. */
class PlantedBreaksTest {

  static LongStream seeds() {
    return LongStream.range(0, 500);
  }

  private static List<Break> breaks(Plan plan) {
    return Audit.of(plan.event(), plan);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_plan_that_only_just_keeps_every_limit_is_safe_and_its_twin_just_beyond_one_is_not(long seed) {
    PlantedBreaks seeded = PlantedBreaks.of(seed);
    Twins twins = seeded.twins();

    assertThat(breaks(twins.clean())).as("%s, not planted", seeded.planting()).isEmpty();
    assertThat(breaks(twins.planted())).as("%s, planted", seeded.planting())
        .allSatisfy(each -> assertThat(each.rule()).isEqualTo(seeded.planting().rule()))
        .anySatisfy(each -> {
          assertThat(each.who()).contains(twins.step());
          assertThat(each.what()).contains(twins.says());
        });
  }

  @Test
  void every_kind_of_break_is_planted_at_least_thirty_times() {
    Map<Planting, Integer> planted = new EnumMap<>(Planting.class);

    seeds().forEach(seed -> planted.merge(PlantedBreaks.kind(seed), 1, Integer::sum));

    assertThat(planted).containsOnlyKeys(Planting.values());
    assertThat(planted.values()).allSatisfy(times -> assertThat(times).isGreaterThanOrEqualTo(30));
  }
}
