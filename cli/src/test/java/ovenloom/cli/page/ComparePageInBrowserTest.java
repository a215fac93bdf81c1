package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import ovenloom.cli.command.Kitchens;
import ovenloom.cli.compare.Comparison;
import ovenloom.cli.compare.Contender;
import ovenloom.cli.compare.Sides;

/** An Easter lunch from one oven and from two, compared, as a browser without a network has it. */
class ComparePageInBrowserTest {

  /** CSS pixels of 9 pt. */
  private static final double NINE_POINT = 12;

  @TempDir
  private static Path folder;

  private static Comparison comparison;
  private static Path page;

  @AutoClose
  private final Browser browser = Browser.open();

  @BeforeAll
  static void write() throws IOException {
    List<Contender> all = Stream.of("easter-lamb", "easter-lamb-two-ovens")
        .map(problem -> Sides.planned(problem, Kitchens.sample(problem, 100, folder)))
        .toList();
    comparison = new Comparison("One oven or two?", all);
    page = Files.writeString(folder.resolve("compare.html"), ComparePage.of(comparison));
  }

  @ParameterizedTest
  @CsvSource({"360, 740, false", "360, 740, true", "1280, 900, false", "1280, 900, true"})
  void nothing_serious_stands_in_the_way_of_anyone(int width, int height, boolean isDark) {
    browser.wide(width, height).dark(isDark).open(page);

    assertThat(browser.serious()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void it_need_not_be_moved_sideways_and_two_stand_side_by_side(int width) {
    browser.wide(width, 740).open(page);

    assertThat(browser.number("document.scrollingElement.scrollWidth")).isLessThanOrEqualTo(width);
    assertThat(browser.number("document.querySelector('#figures .wide').scrollWidth"))
        .isLessThanOrEqualTo(browser.number("document.querySelector('#figures .wide').clientWidth"));
    assertThat(browser.ask("document.querySelector('#figures tbody').innerText")).asString()
        .contains("a plan", "kWh", "at once");
  }

  @Test
  void pictures_of_one_time_are_above_one_another_on_one_scale_and_move_together() {
    browser.wide(360, 740).open(page);

    assertThat(browser.number("document.querySelectorAll('.stack').length"))
        .isEqualTo(Stack.of(comparison.planned()).size());
    assertThat(browser.ask("""
        [...document.querySelectorAll('.stack')].every(stack => stack.querySelectorAll('h4').length === 2
          && new Set([...stack.querySelectorAll('.lane > svg')].map(lane => {
            const place = lane.getBoundingClientRect();
            return Math.round(place.left) + '-' + Math.round(place.width); })).size === 1)"""))
        .isEqualTo(true);
    browser.find(By.cssSelector(".stack")).sendKeys(Keys.ARROW_RIGHT);
    browser.waitUntil("document.querySelector('.stack').scrollLeft > 0");
  }

  @Test
  void what_differs_is_in_the_order_of_time_and_told_in_more_than_colour() {
    browser.wide(1280, 900).open(page);

    assertThat(browser.number("document.querySelectorAll('#differing tbody tr').length"))
        .isEqualTo(comparison.differing().size())
        .isPositive();
    assertThat(browser.ask("""
        [...document.querySelectorAll('#differing .part.bold')].every(part =>
          Number(getComputedStyle(part).fontWeight) >= 700)""")).isEqualTo(true);
  }

  @Test
  void paper_has_all_of_it_in_letters_of_nine_points_and_more() {
    browser.wide(720, 1000).paper().open(page);

    assertThat(browser.ask("""
        [...document.querySelectorAll('.stack, table')].every(each => each.getClientRects().length > 0)"""))
        .isEqualTo(true);
    assertThat(((Number) browser.ask("""
        Math.min(...[...document.querySelectorAll('body *')]
          .filter(each => !each.closest('style') && each.getClientRects().length
            && [...each.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
          .map(each => parseFloat(getComputedStyle(each).fontSize)))""")).doubleValue())
        .isGreaterThanOrEqualTo(NINE_POINT - 0.01);
    assertThat(new String(browser.pdf(8.27, 11.69), StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
  }
}
