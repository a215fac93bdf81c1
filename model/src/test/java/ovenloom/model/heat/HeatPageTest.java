package ovenloom.model.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What the page says was computed is what is computed; {@code -Dovenloom.docs=write} writes its table anew. */
class HeatPageTest {

  private static final Path PAGE = Path.of("../docs/heat.md");
  private static final String HEAD = "| what | published | computed |\n|---|---|---|\n";
  private static final double COEFFICIENT = 18;
  private static final double SEVENTY = 21.11;
  private static final double FORTY_ONE = 5;

  private static List<String> rows() {
    List<String> rows = new ArrayList<>();
    rows.add(row("Kreith: a roast of 1.5 kg, 20 to 77 C at 163 C", "134 min", "%.0f min", roast()));
    String[] potatoes = {"50-60", "60-70", "70-90", "90-110"};
    int[] ovens = {400, 375, 350, 325};
    for (int i = 0; i < ovens.length; i++) {
      rows.add(row("a baked potato at " + ovens[i] + " F", potatoes[i] + " min", "%.0f min",
          KitchenOutcomesTest.potato(ovens[i])));
    }
    String[] turkeys = {"2.75-3", "3-3.75", "3.75-4.25", "4.25-4.5", "4.5-5"};
    for (int i = 0; i < turkeys.length; i++) {
      int pounds = 10 + 3 * i;
      rows.add(row("USDA: a turkey of " + pounds + " lb at 325 F", turkeys[i] + " h", "%.1f h",
          KitchenOutcomesTest.turkey(pounds) / 60.0));
    }
    rows.add(row("what a roast seems to be surrounded by at the end", "79-82 C", "%.0f C",
        TemperatureProfile.uniform(KitchenOutcomesTest.RIB, 4.5)
            .after(200, KitchenOutcomesTest.OVEN)
            .surface()));
    rows.add(row("Gisslen: carry-over of a roast", "3-14 K", "%.0f K",
        KitchenOutcomesTest.carriedOver(KitchenOutcomesTest.OVEN)));
    rows.add(chili("2 in, walk-in freezer", "passes", 0.051, KitchenOutcomesTest.FREEZER));
    rows.add(chili("3 in, walk-in freezer", "fails", 0.076, KitchenOutcomesTest.FREEZER));
    rows.add(chili("2 in, fridge", "fails", 0.051, KitchenOutcomesTest.FRIDGE));
    rows.add(chili("3 in, fridge", "fails", 0.076, KitchenOutcomesTest.FRIDGE));
    return rows;
  }

  private static double roast() {
    double fourier = new Conduction(Shape.SPHERE, 18 * 0.0710 / 0.5).until((163.0 - 77) / (163 - 20));
    return fourier * 0.0710 * 0.0710 / (0.5 / (1000 * 4000)) / 60;
  }

  private static String chili(String where, String outcome, double depth, double air) {
    return String.format(Locale.ROOT,
        "| Roberts: a pan of chili, %s: 135 to 70 F, to 41 F in all | %s 2 h, 6 h | %.1f h, %.1f h |",
        where, outcome, KitchenOutcomesTest.hours(depth, air, COEFFICIENT, SEVENTY),
        KitchenOutcomesTest.hours(depth, air, COEFFICIENT, FORTY_ONE));
  }

  private static String row(String what, String published, String format, double computed) {
    return "| " + what + " | " + published + " | " + String.format(Locale.ROOT, format, computed) + " |";
  }

  @Test
  void the_table_on_the_page_is_what_comes_out() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(HEAD) + HEAD.length();
    int to = page.indexOf("\n\n", from);
    String table = String.join("\n", rows());
    if ("write".equals(System.getProperty("ovenloom.docs"))) {
      Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
    }

    assertThat(Files.readString(PAGE)).contains(HEAD + table + "\n\n");
  }
}
