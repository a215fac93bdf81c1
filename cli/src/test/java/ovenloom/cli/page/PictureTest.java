package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.lane.Lanes;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/** A stretch of time on lanes, and what is written on them. */
class PictureTest {

  private static final Plan SUPPER = HandPlan.forProblem(SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: Gratin with leeks
          steps:
            - {do: slice, takes: 20 min, hands: throughout, in: dish}
            - {do: bake, takes: 40 min, bake: {at: 180 C}, after: slice}
        - dish: Bread
          steps: [{do: knead, takes: 5 min, hands: throughout, in: tray}]
      """)
      .run("Gratin with leeks/slice", at("17:00"))
      .run("Gratin with leeks/bake", at("17:20"))
      .run("Bread/knead", at("18:10"))
      .plan();

  private static List<String> written(String lane, double minutePixels) {
    return panel(minutePixels).lanes()
        .stream()
        .filter(each -> each.label().equals(lane))
        .flatMap(each -> each.boxes().stream())
        .map(each -> each.words() + (each.isBeside() ? " >" : ""))
        .toList();
  }

  private static Panel panel(double minutePixels) {
    return Panel.of(SUPPER, Lanes.of(SUPPER), new Stretch(at("16:00"), at("20:00")), minutePixels);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "7, 7", "8, 4 4", "13, 7 6", "14, 7 7", "15, 5 5 5", "16, 6 6 4", "24, 6 6 6 6"})
  void a_day_on_paper_is_rows_of_some_six_hours_and_no_minute_is_left_out(int hours, String each) {
    List<Stretch> rows = Picture.rows(new Stretch(-60, hours * 60 - 60), 6);

    assertThat(rows).extracting(row -> String.valueOf(row.minutes() / 60))
        .containsExactly(each.split(" ", -1));
    assertThat(rows.getFirst().from()).isEqualTo(-60);
    assertThat(rows.getLast().to()).isEqualTo(hours * 60 - 60);
    for (int i = 1; i < rows.size(); i++) {
      assertThat(rows.get(i).from()).isEqualTo(rows.get(i - 1).to());
    }
  }

  @Test
  void words_that_have_no_room_in_a_box_stand_beside_it_or_are_fewer_or_cut() {
    assertThat(written("Host", 12)).contains("Gratin with leeks: slice", "Bread: knead >");
    assertThat(written("Host", 7)).as("five minutes later the bake is loaded")
        .contains("Gratin with leeks", "Bread: knead >");
    assertThat(written("Host", 4)).contains("Gratin wit\u2026");
    assertThat(written("oven", 1.6)).as("120 minutes are free to the right of it")
        .containsExactly(
            "Gratin with leeks >");
  }

  @Test
  void what_nobody_has_room_for_is_not_begun() {
    assertThat(written("Host", 0.2)).containsOnly("");
  }

  @Test
  void a_preheat_is_told_where_the_oven_is_hot_and_in_full_to_who_points_at_it() {
    Dial wide = dial(5);
    Dial narrow = dial(1);

    assertThat(wide.marks()).extracting(Dial.Mark::words).containsExactly("", "180 C, on at 17:10");
    assertThat(narrow.marks()).extracting(Dial.Mark::words).containsExactly("", "180 C, on at 17:10");
    assertThat(dial(0.3).marks()).extracting(Dial.Mark::words).containsExactly("", "180 C");
    assertThat(wide.marks()).extracting(Dial.Mark::told)
        .containsExactly("warms to 180 C from 17:10 to 17:20", "at 180 C from 17:20 to 18:00");
  }

  private static Dial dial(double minutePixels) {
    return panel(minutePixels).lanes().getFirst().curve();
  }
}
