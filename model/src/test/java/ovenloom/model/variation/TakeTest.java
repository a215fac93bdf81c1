package ovenloom.model.variation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TakeTest {

  private static final List<Axis> AXES = List.of(axis(3), axis(4), axis(5));

  @Test
  void each_with_each_is_every_combination_once() {
    Take all = new Take.EachWithEach();

    Set<List<Integer>> seen = new HashSet<>();
    LongStream.range(0, all.size(AXES)).forEach(index -> seen.add(all.picks(AXES, index)));

    assertThat(seen).hasSize(3 * 4 * 5)
        .allSatisfy(picks -> IntStream.range(0, 3)
            .forEach(i -> assertThat(picks.get(i)).isBetween(0, AXES.get(i).choices().size() - 1)));
  }

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_sample_is_of_what_there_is_in_order_and_none_twice(long seed) {
    Take.Drawn drawn = Take.Drawn.of(20, seed, 60);

    assertThat(drawn.indices()).hasSize(20)
        .doesNotHaveDuplicates()
        .isSorted()
        .allMatch(i -> i >= 0 && i < 60);
  }

  /** Twenty of sixty, 3,000 times: each is drawn 1,000 times but for some six deviations of 26, by the binomial law. */
  @Test
  void every_variation_is_as_likely_in_a_sample_as_any_other() {
    int[] drawn = new int[60];
    LongStream.range(0, 3_000)
        .forEach(seed -> Take.Drawn.of(20, seed, 60).indices().forEach(i -> drawn[i.intValue()]++));

    assertThat(drawn).hasSize(60)
        .satisfies(all -> assertThat(IntStream.of(all)).allMatch(n -> n > 840 && n < 1_160));
  }

  @Test
  void a_number_is_named_with_its_axis() {
    Variation variation = new Variation(new TreeMap<>(Map.of("guests", "80", "ovens", "two ovens")),
        List.of("{}", "{}"));

    assertThat(variation.name()).isEqualTo("80 guests, two ovens");
  }

  private static Axis axis(int choices) {
    return new Axis("axis " + choices, IntStream.range(0, choices).mapToObj(i -> "choice " + i).toList());
  }
}
