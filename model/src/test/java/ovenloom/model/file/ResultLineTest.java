package ovenloom.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Result;

class ResultLineTest {

  static LongStream seeds() {
    return LongStream.range(0, 100);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_result_reads_as_it_was_written(long seed) {
    Result result = random(new Random(seed));

    String line = ResultLine.json(result);

    assertThat(line).doesNotContain("\n");
    assertThat(ResultLine.read(line)).isEqualTo(result);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "7", "{\"run\":\"a\"}", "null"})
  void what_is_no_result_reads_as_none(String line) {
    assertThat(ResultLine.read(line)).isNull();
  }

  private static Result random(Random random) {
    Map<String, String> choices = new LinkedHashMap<>();
    choices.put("ovens", "two \"ovens\"\nor so");
    choices.put("guests", Integer.toString(random.nextInt(200)));
    boolean isAPlan = random.nextBoolean();
    Result.Answer answer = isAPlan ? Result.Answer.PLAN
        : random.nextBoolean() ? Result.Answer.NO_PLAN : Result.Answer.NONE_FOUND;
    return new Result("run " + random.nextInt(), "event " + random.nextInt(), choices,
        List.of("{\"guests\":80}", "{\"kitchen\":{\"ovens\":null}}"),
        random.nextBoolean() ? random.nextLong(1, 1_000_000) : null,
        random.nextBoolean() ? random.nextInt(1_000) / 4.0 : null, random.nextLong(), random.nextBoolean(),
        "0.1",
        answer, isAPlan ? null : "Too hot; \u201cno\u201d.\nIt breaks a rule.",
        random.nextBoolean() ? "Soup" : null,
        isAPlan ? score(random) : null,
        random.nextBoolean() ? new Bound(random.nextInt(99), random.nextInt(99)) : null,
        isAPlan ? figures(random) : null);
  }

  private static Score score(Random random) {
    Map<Wish, Long> points = new EnumMap<>(Wish.class);
    points.put(Wish.CALM, random.nextLong(1_000));
    points.put(Wish.ENERGY, random.nextLong(1_000));
    return new Score(0, Map.of("Soup", random.nextLong(100), "Apples", 0L), points, random.nextLong(5_000),
        random.nextLong(5_000));
  }

  private static Figures figures(Random random) {
    return new Figures(-random.nextInt(2_000), random.nextInt(1_000), random.nextInt(500), random.nextInt(60),
        random.nextInt(1_200), random.nextInt(9), random.nextInt(9), random.nextInt(200),
        Map.of(Figures.Scarce.HANDS, random.nextInt(101), Figures.Scarce.OVENS, random.nextInt(101)));
  }
}
