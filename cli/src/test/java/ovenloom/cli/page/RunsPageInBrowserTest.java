package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.HandResults;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result.Answer;

/** The page of 120 runs along three axes, as a browser has it. */
class RunsPageInBrowserTest {

  private static final Axis MENU = new Axis("menu", List.of("roast lamb with spring greens", "cod", "squash",
      "beef", "tart"));
  private static final List<String> KITCHENS = List.of("club kitchen", "club kitchen with a hot cabinet",
      "village hall", "boathouse");
  private static final List<String> GUESTS = List.of("40", "60", "80", "120", "160", "200");

  /** CSS pixels of 9 pt. */
  private static final double NINE_POINT = 12;

  @TempDir
  private static Path folder;

  private static Path page;

  @AutoClose
  private final Browser browser = Browser.open();

  @BeforeAll
  static void write() throws IOException {
    page = Files.writeString(folder.resolve("runs.html"), RunsPage.of(tally(), "Which menu & kitchen?", 120));
  }

  /** The more guests the fewer plans; the hall has none at all. */
  private static Tally tally() {
    Axis kitchen = new Axis("kitchen", KITCHENS);
    Axis guests = new Axis("guests", GUESTS);
    Tally tally = new Tally(List.of(kitchen, guests, MENU));
    for (int k = 0; k < KITCHENS.size(); k++) {
      for (int g = 0; g < GUESTS.size(); g++) {
        for (int m = 0; m < MENU.choices().size(); m++) {
          var choices = HandResults.choices(KITCHENS.get(k), GUESTS.get(g));
          choices.put("menu", MENU.choices().get(m));
          tally.add(k == 2 ? HandResults.without(choices, Answer.NO_PLAN, "Too many.")
              : g + m < 7 ? HandResults.plan(choices, 10L * g, 300 + m, 40 + 17L * g - 5L * m + 7L * k,
                  60 + 30L * m + 11L * g)
                  : HandResults.without(choices, g == 5 ? Answer.NO_PLAN : Answer.NONE_FOUND, "No."));
        }
      }
    }
    return tally;
  }

  @ParameterizedTest
  @CsvSource({"360, 740, false", "360, 740, true", "1280, 900, false", "1280, 900, true"})
  void nothing_serious_stands_in_the_way_of_anyone(int width, int height, boolean isDark) {
    browser.wide(width, height).dark(isDark).open(page);
    browser.ask("document.querySelector('details').open = true");

    assertThat(browser.serious()).isEmpty();
  }

  @Test
  void a_phone_need_not_be_moved_sideways() {
    browser.wide(360, 740).open(page);
    browser.ask("document.querySelector('details').open = true");

    assertThat(browser.number("document.scrollingElement.scrollWidth")).isLessThanOrEqualTo(360);
  }

  @Test
  void the_map_is_guests_against_what_has_most_choices_and_tells_in_words_what_fits() {
    browser.wide(360, 740).open(page);

    assertThat(browser.ask("document.querySelector('#map-1').textContent")).isEqualTo("guests by menu");
    assertThat(words("#map-1 + div tbody tr:first-of-type")).containsExactly("40", "3 of 4 1 no",
        "3 of 4 1 no", "3 of 4 1 no", "3 of 4 1 no", "3 of 4 1 no");
    assertThat(words("#map-1 + div tbody tr:last-of-type")).containsExactly("200", "3 of 4 1 no",
        "3 of 4 1 no", "0 of 4 4 no", "0 of 4 4 no", "0 of 4 4 no");
  }

  private List<String> words(String row) {
    List<?> cells = (List<?>) browser.ask(
        "[...document.querySelectorAll('" + row + " > *')].map(each => each.textContent.trim())");
    return cells.stream().map(each -> String.valueOf(each).replaceAll("\\s+", " ")).toList();
  }

  @Test
  void cells_are_told_apart_without_their_colours() {
    browser.wide(1280, 900).open(page);

    List<?> patterns = (List<?>) browser.ask("""
        ['fits', 'some', 'open', 'no'].map(each =>
          (cell => getComputedStyle(cell).backgroundImage + getComputedStyle(cell).backgroundSize)(
            document.querySelector('.legend .' + each)))""");

    assertThat(new ArrayList<>(patterns)).hasSize(4).doesNotHaveDuplicates();
  }

  @Test
  void every_run_that_no_other_beats_is_drawn_and_named() {
    browser.wide(1280, 900).open(page);
    int points = tally().front().points().size();

    assertThat(points).isGreaterThan(1);
    assertThat(browser.all(".front .spot")).hasSize(points);
    assertThat(browser.all("#unbeaten + div tbody tr")).hasSize(points);
    assertThat(browser.ask(
        """
            (box => [...document.querySelectorAll('.front .spot rect, .front .ring')].every(each => {
              const own = each.getBoundingClientRect();
              return own.left >= box.left && own.right <= box.right && own.top >= box.top && own.bottom <= box.bottom;
            }))(document.querySelector('.front svg').getBoundingClientRect())"""))
        .as("all are inside")
        .isEqualTo(true);
  }

  @Test
  void what_can_be_moved_sideways_can_be_reached_by_the_keyboard() {
    browser.wide(360, 740).open(page);

    assertThat(browser.ask("""
        [...document.querySelectorAll('.wide')].every(each => each.tabIndex === 0
          && document.getElementById(each.getAttribute('aria-labelledby')).textContent !== '')"""))
        .isEqualTo(true);
  }

  @Test
  void it_holds_all_it_needs_and_no_script() throws IOException {
    String html = Files.readString(page);

    assertThat(html).contains("default-src 'none'").doesNotContain("<script", "http:", "https:", "src=");
    assertThat(html).contains("Which menu &amp; kitchen?");
  }

  @Test
  void paper_has_no_letters_below_nine_point() {
    browser.wide(720, 1000).paper().open(page);

    assertThat(((Number) browser.ask("""
        Math.min(...[...document.querySelectorAll('body *')]
          .filter(each => !each.closest('style') && each.getClientRects().length
            && [...each.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
          .map(each => parseFloat(getComputedStyle(each).fontSize)))""")).doubleValue())
        .isGreaterThanOrEqualTo(NINE_POINT - 0.01);
  }

  @ParameterizedTest
  @CsvSource({"8.27, 11.69", "8.5, 11"})
  void it_prints_on_a4_and_letter(double width, double height) {
    browser.wide(1280, 900).open(page);

    String pdf = new String(browser.pdf(width, height), StandardCharsets.ISO_8859_1);

    assertThat(Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(pdf).results().count()).isBetween(2L, 8L);
  }
}
