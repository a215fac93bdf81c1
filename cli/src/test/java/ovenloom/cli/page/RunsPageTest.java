package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ovenloom.cli.sheet.HandResults;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result.Answer;

class RunsPageTest {

  @Test
  void a_page_of_no_run_at_all_can_be_written() {
    String page = RunsPage.of(new Tally(HandResults.AXES), "Nothing yet", 6);

    assertThat(page).contains("0 runs.", "6 runs are left").doesNotContain("Runs that no other beats");
  }

  @Test
  void a_page_of_one_axis_has_its_table_and_no_map() {
    Tally tally = new Tally(List.of(new Axis("ovens", List.of("one", "two"))));
    tally.add(HandResults.plan(Map.of("ovens", "one"), 0, 1, 60, 50));

    assertThat(RunsPage.of(tally, "Ovens", 2)).contains("<h3 id=\"axis-0\">ovens</h3>")
        .doesNotContain("What fits");
  }

  @Test
  void a_name_from_a_stranger_is_only_words() {
    Tally tally = new Tally(List.of(new Axis("<b>", List.of("<script>", "\"quoted\""))));

    assertThat(RunsPage.of(tally, "</title><script>", 2)).doesNotContain("<script>")
        .contains("&lt;script&gt;");
  }

  @ParameterizedTest
  @CsvSource({"PLAN, PLAN, fits, 2 of 2, ''", "PLAN, NO_PLAN, some, 1 of 2, 1 no",
      "NO_PLAN, NO_PLAN, no, 0 of 2, 2 no", "NO_PLAN, NONE_FOUND, open, 0 of 2, '1 no, 1 open'",
      "PLAN, MISTAKEN, some, 1 of 2, 1 wrong"})
  void a_cell_tells_how_many_of_its_runs_fit(Answer one, Answer other, String style, String words,
      String rest) {
    Tally tally = new Tally(
        List.of(HandResults.KITCHEN, HandResults.GUESTS, new Axis("menu", List.of("a", "b"))));
    add(tally, "a", one);
    add(tally, "b", other);

    FitMap map = new FitMap("map", tally.fits().getFirst());
    var cell = map.fit().at("club", "80");

    assertThat(map.style(cell)).isEqualTo(style);
    assertThat(map.words(cell)).isEqualTo(words);
    assertThat(map.rest(cell)).isEqualTo(rest);
  }

  private static void add(Tally tally, String menu, Answer answer) {
    var choices = HandResults.choices("club", "80");
    choices.put("menu", menu);
    tally.add(answer == Answer.PLAN ? HandResults.plan(choices, 0, 1, 1, 1)
        : HandResults.without(choices, answer, "why"));
  }

  @ParameterizedTest
  @CsvSource({"PLAN, fits", "NO_PLAN, no", "NONE_FOUND, none found", "MISTAKEN, wrong", "FAILED, wrong"})
  void a_cell_of_one_run_says_how_it_ended(Answer answer, String words) {
    Tally tally = new Tally(HandResults.AXES);
    var choices = HandResults.choices("club", "80");
    tally.add(answer == Answer.PLAN ? HandResults.plan(choices, 0, 1, 1, 1)
        : HandResults.without(choices, answer, "why"));

    FitMap map = new FitMap("map", tally.fits().getFirst());

    assertThat(map.words(map.fit().at("club", "80"))).isEqualTo(words);
    assertThat(map.words(map.fit().at("club", "120"))).isEqualTo("no run");
  }

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_scale_has_room_for_all_and_a_few_round_numbers(long seed) {
    long least = seed * seed % 37;
    long most = least + seed * seed * seed;

    Scale scale = Scale.of(least, most);

    assertThat(scale.percent(least)).isBetween(1.0, 60.0);
    assertThat(scale.percent(most)).isBetween(40.0, 99.0);
    assertThat(scale.ticks()).hasSizeBetween(1, 7).allSatisfy(tick -> {
      assertThat(scale.percent(tick)).isBetween(0.0, 100.0);
      assertThat(tick % scale.step()).isZero();
    });
    assertThat(Long.toString(scale.step())).matches("[125]0*");
  }
}
