package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;
import static ovenloom.cli.sheet.SheetLines.HOST;
import static ovenloom.cli.sheet.SheetLines.KITCHEN;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Where;

/** A plan as strips of time. */
class StripSheetTest {

  private static final String MENU = """
      dishes:
        - dish: Pie
          steps:
            - {do: fill, takes: 20 min, hands: throughout, in: dish, keeps: {fridge: 2 days}}
            - {do: bake, takes: 40 min, bake: {at: 180 C}, keeps: {counter: 1 h}}
        - dish: Soup
          steps: [{do: simmer, takes: 30 min, burner: large, in: pot}]
      """;

  private static Plan supper() {
    return HandPlan.forProblem(KITCHEN + HOST + MENU)
        .run("Pie/fill", at("12:00") - 1440)
        .waits("Pie/fill", new Where.OnShelf("fridge", List.of("top")), at("18:00"))
        .run("Pie/bake", at("18:00"))
        .run("Soup/simmer", at("18:20"))
        .wash("dish", 1, at("14:00"), "Host")
        .plan();
  }

  @Test
  void each_day_is_a_strip_from_its_first_work_to_its_last_and_the_last_two_hours_are_one_of_their_own() {
    assertThat(StripSheet.of(supper(), Glyphs.ASCII, 60, false)).isEqualTo("""
        Supper
        8 guests. Saturday 10 October 2026: supper at 19:00.

        Friday 9 October, the day before
        --------------------------------
        Each letter is 1 min.
                           12:00----------12:15
        Host               PPPPPPPPPPPPPPPPPPPP

        Saturday 10 October, on the day
        -------------------------------
        Each letter is 10 min.
                           14:00-------16:00-------18:00--
        Oven               .......................~PPPP...
        Large burner 1     ..........................SSS..
        Host               %.......................P..P...
        Fridge, top shelf  PPPPPPPPPPPPPPPPPPPPPPPP.......
        All sit down       ..............................!

        Before supper at 19:00: each letter is 4 min.
                           17:00----------18:00--------------
        Oven               ............~~~PPPPPPPPPP.........
        Large burner 1     ....................SSSSSSSS......
        Host               ...............P........P.........
        Fridge, top shelf  PPPPPPPPPPPPPPP...................
        All sit down       ..............................!...

        What the letters are
        --------------------
        P Pie                     S Soup
        ~ oven on, nothing in it  % washing up
        = break                   ! all sit down
        Where several things are at once, their letters take turns.
        """);
  }

  @Test
  void blocks_and_lines_are_drawn_where_they_can_be_read() {
    var ascii = StripSheet.of(supper(), Glyphs.ASCII, 80, false);
    var blocks = StripSheet.of(supper(), Glyphs.BLOCKS, 80, false);

    assertThat(ascii).matches("\\p{ASCII}+");
    assertThat(blocks).contains("\u2500", "\u2591", "\u25bc");
    assertThat(blocks.lines()).hasSameSizeAs(ascii.lines().toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 140})
  void no_line_is_longer_than_the_page_is_wide(int width) {
    assertThat(StripSheet.of(supper(), Glyphs.BLOCKS, width, false).lines())
        .allMatch(line -> line.length() <= width);
  }

  @ParameterizedTest
  @CsvSource({"60, 10", "80, 5", "140, 3"})
  void a_wider_page_shows_it_more_closely(int width, int step) {
    var steps = StripSheet.of(supper(), Glyphs.ASCII, width, false)
        .lines()
        .filter(line -> line.startsWith("Each letter is"))
        .toList();

    assertThat(steps.getLast()).isEqualTo("Each letter is " + step + " min.");
  }
}
