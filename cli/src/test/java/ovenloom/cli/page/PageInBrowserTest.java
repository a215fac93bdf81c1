package ovenloom.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import ovenloom.cli.command.Kitchens;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.RunSheet;
import ovenloom.model.plan.Plan;

/** The page of an Easter lunch for two cooks and two ovens, as a browser has it. */
class PageInBrowserTest {

  /** CSS pixels of 9 pt. */
  private static final double NINE_POINT = 12;

  @TempDir
  private static Path folder;

  private static Plan plan;
  private static Path page;

  @AutoClose
  private final Browser browser = Browser.open();

  @BeforeAll
  static void write() throws IOException {
    plan = Kitchens.sample("easter-lamb-two-ovens", 300, folder);
    page = Files.writeString(folder.resolve("plan.html"), PlanPage.of(plan));
  }

  @ParameterizedTest
  @CsvSource({"360, 740, false", "360, 740, true", "1280, 900, false", "1280, 900, true"})
  void nothing_serious_stands_in_the_way_of_anyone(int width, int height, boolean isDark) {
    browser.wide(width, height).dark(isDark).open(page);

    assertThat(browser.serious()).isEmpty();
  }

  @Test
  void a_phone_need_not_be_moved_sideways() {
    browser.wide(360, 740).open(page);

    assertThat(browser.number("document.scrollingElement.scrollWidth")).isLessThanOrEqualTo(360);
    assertThat(browser.number("document.querySelector('#next').getBoundingClientRect().bottom"))
        .as("what to do next is on the first screen")
        .isLessThan(740);
  }

  @Test
  void the_last_hours_open_where_all_sit_down_and_lanes_keep_their_names() {
    browser.wide(360, 740).open(page);
    assertThat(browser.ask(IN_SIGHT)).as("half past one, on a phone").isEqualTo(true);

    browser.ask("(each => { each.scrollLeft = each.scrollWidth; return 1; })(" + LAST + ")");

    browser.waitUntil(LAST + ".scrollLeft > 0");
    assertThat(browser.number(LAST + ".querySelector('.name').getBoundingClientRect().left"))
        .isBetween(0L, 30L);
    browser.waitUntil(WRITTEN_OUT_OF_SIGHT + " === 0");
  }

  private static final String LAST = "document.querySelector('#last-hours + .picture')";

  private static final String IN_SIGHT = """
      (picture => {
        const [from, to, opens] = ['from', 'to', 'opens'].map(name => Date.parse(picture.dataset[name]));
        const lane = picture.querySelector('.lane > svg').getBoundingClientRect();
        const at = lane.left + (opens - from) / (to - from) * lane.width;
        const names = picture.querySelector('.name').getBoundingClientRect().right;
        return names < at && at < picture.getBoundingClientRect().right;
      })(%s)""".formatted(LAST);

  /** Words that begin behind the names of lanes though their box goes on long enough beyond them. */
  private static final String WRITTEN_OUT_OF_SIGHT = """
      (picture => [...picture.querySelectorAll('text.in')].filter(words => {
        const edge = picture.querySelector('.name').getBoundingClientRect().right;
        const box = words.parentNode.firstElementChild.getBoundingClientRect();
        return box.right - edge > words.getComputedTextLength() + 8 && words.getBoundingClientRect().left < edge - 1;
      }).length)(%s)"""
      .formatted(LAST);

  @Test
  void what_is_next_on_another_day_is_told_with_its_day() {
    Ticked first = View.of(plan).days().getFirst().lines().getFirst();
    browser.wide(360, 740).open(page);
    String before = "new Date(Date.parse('" + first.at() + "') - 36 * 3600000).toISOString()";
    browser.at(String.valueOf(browser.ask(before))).open(page);

    assertThat(browser.ask("document.getElementById('next').textContent")).asString()
        .startsWith("Next, in 36 h: Saturday 27 March, " + first.time());

    browser
        .at(String.valueOf(browser.ask("new Date(Date.parse('" + first.at() + "') - 60000).toISOString()")))
        .open(page);
    assertThat(browser.ask("document.getElementById('next').textContent")).asString()
        .startsWith("Next, in 1 min: " + first.time());
  }

  @Test
  void every_line_of_the_run_sheet_is_on_the_page_in_order() {
    browser.wide(1280, 900).open(page);
    String text = squeezed(String.valueOf(browser.ask("document.body.textContent")));

    int at = 0;
    for (String line : RunSheet.of(plan, 400, false).lines().map(PageInBrowserTest::squeezed).toList()) {
      if (!line.matches("-*")) {
        int found = text.indexOf(line, at);
        assertThat(found).as(line).isNotNegative();
        at = found;
      }
    }
  }

  private static String squeezed(String words) {
    return words.replaceAll("\\s+", " ").strip();
  }

  @Test
  void what_is_ticked_stays_ticked() {
    browser.wide(360, 740).open(page);
    browser.find(By.cssSelector("input[data-key=act-2]")).click();

    browser.reload();

    assertThat(browser.number("document.querySelectorAll('#sheet input[data-key]:checked').length"))
        .isEqualTo(1);
    assertThat(browser.ask("document.querySelector('input[data-key=act-2]').checked")).isEqualTo(true);
  }

  @Test
  void the_now_line_stands_between_what_was_and_what_comes_and_the_next_line_is_counted_down_to() {
    Ticked first = View.of(plan).days().getLast().lines().getFirst();
    Ticked second = View.of(plan)
        .days()
        .getLast()
        .lines()
        .stream()
        .filter(line -> line.act().at() > first.act().at())
        .findFirst()
        .orElseThrow();
    int apart = second.act().at() - first.act().at();
    browser.wide(360, 740).at(first.at()).open(page);

    assertThat(browser.all(".nowline")).hasSize(1);
    assertThat(browser.ask("document.querySelector('.nowline').nextElementSibling.dataset.at"))
        .isEqualTo(second.at());
    assertThat(browser
        .ask("document.querySelector('.nowline').nextElementSibling.querySelector('.due').textContent"))
        .asString()
        .isEqualToIgnoringWhitespace(
            "in " + (apart < 60 ? "" : apart / 60 + " h ") + (apart % 60 == 0 ? "" : apart % 60 + " min"));
    assertThat(browser.number("document.querySelectorAll('.lane .now').length"))
        .as("through the lanes of the day")
        .isPositive();
  }

  @Test
  void what_was_passed_over_is_told_to_who_ticks() {
    List<Ticked> lines = View.of(plan).days().getFirst().lines();
    browser.wide(360, 740).at(lines.getLast().at()).open(page);
    assertThat(browser.ask("document.getElementById('open').textContent")).isEqualTo("");

    browser.find(By.cssSelector("input[data-key=act-2]")).click();

    assertThat(browser.ask("document.getElementById('open').textContent")).asString()
        .startsWith("Still open, and ")
        .contains(lines.getFirst().act().words());
    assertThat(browser.ask("document.querySelector('#open a').hash")).isEqualTo("#act-1");
  }

  @Test
  void it_rings_when_something_falls_due_and_only_then() {
    Ticked first = View.of(plan).days().getFirst().lines().getFirst();
    String before = "new Date(Date.parse('" + first.at() + "') - 4000).toISOString()";
    browser.wide(360, 740).open(page);
    browser.at(String.valueOf(browser.ask(before))).open(page);
    browser.find(By.id("ring")).click();
    assertThat(browser.number(RUNG)).as("to be heard once").isEqualTo(1);
    assertThat(browser.ask("Date.now() < Date.parse('" + first.at() + "')")).as("it is not due yet")
        .isEqualTo(true);

    browser.waitUntil(RUNG + " === 2");
    assertThat(browser.ask("Date.now() >= Date.parse('" + first.at() + "')")).as("it is due").isEqualTo(true);
    assertThat(browser.ask("document.getElementById('due').textContent")).asString()
        .startsWith("Due: " + first.time());
  }

  private static final String RUNG = "Number(document.documentElement.dataset.rung)";

  @Test
  void one_cook_may_see_her_own_lines_only() {
    browser.wide(360, 740).open(page);
    browser.find(By.cssSelector("input[name=who][value=Jonas]")).click();

    List<?> shown = (List<?>) browser.ask(
        "[...document.querySelectorAll('#sheet .act:not([hidden])')].map(row => row.dataset.who)");

    assertThat(shown.stream().map(String::valueOf).toList()).isNotEmpty()
        .allMatch(who -> who.contains("Jonas"))
        .hasSize(View.of(plan)
            .ofCooks()
            .getOrDefault("Jonas", List.of())
            .stream()
            .mapToInt(PageInBrowserTest::acts)
            .sum());
  }

  private static int acts(Day day) {
    return (int) day.lines().stream().filter(line -> line.act().turn() != Act.Turn.TABLE).count();
  }

  @Test
  void what_stands_where_is_shown_for_a_chosen_moment() {
    browser.wide(360, 740).open(page);
    long moments = browser.number("document.getElementById('at').max");
    assertThat(moments).isPositive();

    browser.ask(
        "(at => { at.value = 1; at.dispatchEvent(new Event('input')); return 1; })(document.getElementById('at'))");

    assertThat(browser.ask(
        """
            (() => { const from = [...new Set([...document.querySelectorAll('.scene')].map(each => Date.parse(each.dataset.from)))]
                .sort((one, other) => one - other)[1];
              return [...document.querySelectorAll('.scene')].every(each => each.hasAttribute('hidden')
                === !(Date.parse(each.dataset.from) <= from && from < Date.parse(each.dataset.to))); })()"""))
        .isEqualTo(true);
  }

  @Test
  void paper_has_a_sheet_for_each_cook_on_a_page_of_its_own_and_no_letters_below_nine_point() {
    browser.wide(720, 1000).paper().open(page);

    assertThat(browser.number("document.querySelectorAll('.paper').length")).isEqualTo(2);
    assertThat(browser.ask("""
        [...document.querySelectorAll('.paper')].every(each => getComputedStyle(each).display === 'block'
          && getComputedStyle(each).breakBefore === 'page')""")).isEqualTo(true);
    assertThat(((Number) browser.ask("""
        Math.min(...[...document.querySelectorAll('body *')]
          .filter(each => !each.closest('script, style') && each.getClientRects().length
            && [...each.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
          .map(each => parseFloat(getComputedStyle(each).fontSize)
            * (each.getScreenCTM && each.closest('.level') ? each.getScreenCTM().a : 1)))""")).doubleValue())
        .isGreaterThanOrEqualTo(NINE_POINT - 0.01);
  }

  @ParameterizedTest
  @CsvSource({"8.27, 11.69", "8.5, 11"})
  void it_prints_on_a4_and_letter(double width, double height) {
    browser.wide(1280, 900).open(page);

    String pdf = new String(browser.pdf(width, height), StandardCharsets.ISO_8859_1);

    assertThat(pdf).startsWith("%PDF-");
    assertThat(Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(pdf).results().count())
        .as("pages: sheet, two cooks, pictures, shelves, warmth, the rest")
        .isBetween(7L, 16L);
  }
}
