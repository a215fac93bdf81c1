package ovenloom.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.compare.Sides.pie;
import static ovenloom.cli.compare.Sides.planned;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.plan.Plan;

class CompareSheetTest {

  private static final Plan PIE = pie(at("17:30"), at("18:00"));

  private static Comparison comparison(int count, String name) {
    List<Contender> all = IntStream.rangeClosed(1, count)
        .mapToObj(each -> planned(each + name, PIE))
        .toList();
    return new Comparison("Which of the ovens is to be kept?", all);
  }

  @ParameterizedTest
  @CsvSource({"40, 2", "40, 6", "60, 2", "60, 6", "80, 2", "80, 3", "80, 6", "140, 2", "140, 6"})
  void it_keeps_to_the_width_and_has_everybody_in_it(int width, int count) {
    String sheet = CompareSheet.of(comparison(count, ". oven of the whole house, by the window"), width,
        false);

    assertThat(sheet.lines()).allMatch(line -> line.length() <= width);
    assertThat(sheet.lines()
        .filter(line -> line.startsWith("Fits"))
        .map(line -> line.split("a plan", -1).length - 1)
        .toList()).as("each with the first again")
        .satisfies(
            groups -> assertThat(groups.stream().mapToInt(each -> each - 1).sum()).isEqualTo(count - 1));
  }

  @Test
  void two_fit_on_a_screen_of_24_lines_and_six_side_by_side_on_a_wide_one() {
    assertThat(CompareSheet.of(comparison(2, " ovens"), 80, false).lines()).hasSizeLessThanOrEqualTo(24);
    assertThat(
        CompareSheet.of(comparison(6, " ovens"), 140, false).lines().filter(line -> line.startsWith("Fits")))
        .hasSize(1);
  }

  @Test
  void names_stand_out_in_a_terminal_that_has_colours() {
    assertThat(CompareSheet.of(comparison(2, " ovens"), 80, true)).contains("\u001b[1mWhich of the ovens");
    assertThat(CompareSheet.of(comparison(2, " ovens"), 80, false)).doesNotContain("\u001b");
  }
}
